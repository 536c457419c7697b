import { remark } from '../errors/core-findings.js';
import type { Remark } from '../errors/finding.js';
import { COMPUTED } from '../errors/source.js';
import type { StackSheet } from '../joining/fastener.js';
import { carried } from './carry.js';
import type { Fastener } from './fastener.js';
import { layersAt, type StandingSheet, sheetsBeside } from './layers.js';
import { overhangRemarks } from './overhang.js';
import { type Overlap, outward, overlapsOf } from './overlap.js';
import { WIDEST_GAP } from './place.js';
import { reachTo } from './reach.js';
import { spread, turnRemarks } from './spread.js';
import type { Seated } from './types.js';

/** Fasteners of a joint with what to know about them. */
export interface Fastened {
  readonly joint: string;
  /** Part the joint starts from. */
  readonly part: string;
  readonly fasteners: readonly Fastener[];
  /** Holes they want in the sheets of each end. */
  readonly holes: readonly (number | null)[];
  readonly remarks: readonly Remark[];
}

/** Fasteners that have their places: as the made parts were cut with them, and of the joints before. */
export interface Places {
  readonly cut: readonly Fastener[];
  readonly before: readonly Fastener[];
}

/**
 * Fasten a joint: fasteners are spread over its overlaps; on a part that is made they stay where they were cut.
 * @param sheets every panel of the assembly
 */
export function fasten(seated: Seated, sheets: readonly StandingSheet[], { cut, before }: Places): Fastened {
  const { joint, from, to } = seated;
  const none = { joint: joint.name, part: from.part.name, fasteners: [], holes: [] };
  if (joint.by === null) return { ...none, remarks: seated.gap > WIDEST_GAP ? [nothingMeets(seated)] : [] };
  const { kind, ask } = joint.by;
  const stack = [from, to].map(
    (p): StackSheet => ({ part: p.piece, thickness: p.part.formed.thickness, material: p.part.material }),
  );
  const overlaps = overlapsOf(seated);
  if (overlaps.length === 0) return { ...none, remarks: [nothingMeets(seated)] };
  const made = from.part.made || to.part.made;
  const others = before.filter((f) => f.kind === kind.name);
  const own = made ? cut.filter((f) => f.joint === joint.name && f.kind === kind.name) : [];
  const out = outward((overlaps[0] as Overlap).from);
  const stood = (count: number) => {
    const needs = kind.needs(stack, ask as never, count);
    const done =
      own.length > 0
        ? carried(seated, overlaps, own, needs)
        : spread(seated, overlaps, { ask, needs, before: others });
    const places = done.fasteners.map((f) => f.at);
    const beside = sheetsBeside(places, out, sheets);
    return {
      fasteners: done.fasteners,
      remarks: [...done.remarks, ...turnRemarks(done.fasteners, overlaps, needs)],
      holes: needs.holes,
      layers: Math.max(2, ...places.map((at) => layersAt(at, out, beside))),
    };
  };
  const first = stood(stack.length);
  // where more sheets lie than are joined, they may need more room
  const { fasteners, holes, remarks, layers } = first.layers > stack.length ? stood(first.layers) : first;
  const reach = () => Math.max(0, ...fasteners.map((f) => reachTo(f.at, out, [from, to])));
  const stacked = kind.remarks(stack, ask as never, { layers, reach });
  return {
    joint: joint.name,
    part: from.part.name,
    fasteners,
    holes,
    remarks: [...stacked, ...remarks, ...overhangRemarks(seated, overlaps)],
  };
}

function nothingMeets({ joint, gap }: Seated): Remark {
  const [a, b] = [joint.from, joint.to].map(({ piece, site }) => `${piece}.${site}`) as [string, string];
  return remark('joint-empty', joint.by === null ? 'warning' : 'error', {
    ...(gap <= WIDEST_GAP ? {} : { value: gap, limit: WIDEST_GAP, unit: 'mm' }),
    values: { ends: [a, b] },
    source: COMPUTED,
  });
}
