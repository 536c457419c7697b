import type { Remark } from '../errors/finding.js';
import type { FastenerPlace, StackSheet } from '../joining/fastener.js';
import { carried } from './carry.js';
import type { Fastener } from './fastener.js';
import { layersAt } from './layers.js';
import { type Overlap, outward, overlapsOf } from './overlap.js';
import { reachTo } from './reach.js';
import { spread } from './spread.js';
import type { Placed, Seated } from './types.js';

/** Fasteners of a joint with what to know about them. */
export interface Fastened {
  readonly joint: string;
  /** Part the joint starts from. */
  readonly part: string;
  readonly fasteners: readonly Fastener[];
  readonly remarks: readonly Remark[];
}

/**
 * Fasten a joint: fasteners are spread over its overlaps; on a part that is made they stay where they were cut.
 * @param cut fasteners as they were when the made parts were cut
 */
export function fasten(seated: Seated, all: readonly Placed[], cut: readonly Fastener[]): Fastened {
  const { joint, from, to } = seated;
  const told = { joint: joint.name, part: from.part.name };
  if (joint.by === null) return { ...told, fasteners: [], remarks: [] };
  const { kind, ask } = joint.by;
  const stack = [from, to].map(
    (p): StackSheet => ({ part: p.piece, thickness: p.part.formed.thickness, material: p.part.material }),
  );
  const needs = kind.needs(stack, ask as never);
  const overlaps = overlapsOf(seated);
  if (overlaps.length === 0) return { ...told, fasteners: [], remarks: [nothingMeets(seated)] };
  const made = from.part.made || to.part.made;
  const own = made ? cut.filter((f) => f.joint === joint.name && f.kind === kind.name) : [];
  const { fasteners, remarks } =
    own.length > 0 ? carried(seated, overlaps, own, needs) : spread(seated, overlaps, ask, needs);
  const out = outward((overlaps[0] as Overlap).from);
  const place: FastenerPlace = {
    layers: Math.max(2, ...fasteners.map((f) => layersAt(f.at, out, all))),
    reach: () => Math.max(0, ...fasteners.map((f) => reachTo(f.at, out, [from, to]))),
  };
  return { ...told, fasteners, remarks: [...kind.remarks(stack, ask as never, place), ...remarks] };
}

function nothingMeets({ sites }: Seated): Remark {
  return {
    code: 'joint-empty',
    severity: 'error',
    message: `the faces of ${sites[0].name} and ${sites[1].name} do not lie against each other, so nothing can be fastened`,
    source: 'computed',
    fix: 'check the sizes that bring them together',
  };
}
