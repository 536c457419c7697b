import { remark } from '../errors/core-findings.js';
import type { Remark } from '../errors/finding.js';
import { length3, sub3 } from '../fold/space.js';
import type { FastenerAsk, FastenerNeeds } from '../joining/fastener.js';
import { capacity, fieldOf, pointsOn, type Run, runOf, share } from '../joining/layout.js';
import { type Fastener, fastenerAt } from './fastener.js';
import { keepOffs } from './keep-off.js';
import type { Overlap } from './overlap.js';
import type { Seated } from './types.js';

/** Fasteners with what to know about where they stand. */
export interface Spread {
  readonly fasteners: readonly Fastener[];
  readonly remarks: readonly Remark[];
}

/** Spread fasteners over the overlaps of a joint, as a maker does: evenly, clear of edges and bends. */
export function spread(
  seated: Seated,
  overlaps: readonly Overlap[],
  ask: FastenerAsk,
  needs: FastenerNeeds,
): Spread {
  const runs = overlaps.map((o) => runOf(o.shape, fieldOf(o.shape, keepOffs(o, needs))));
  const counts = share(runs, ask, needs);
  const groups = overlaps.flatMap((o, i) => {
    const run = runs[i] as Run;
    return [pointsOn(run, counts[i] as number).map((p) => fastenerAt(seated, o, p, needs.holes))];
  });
  const most = runs.reduce((s, r) => s + capacity(r, needs.pitch), 0);
  return {
    fasteners: groups.flat(),
    remarks: [...tightRemarks(overlaps, runs, needs), ...closeRemarks(groups, needs, most)],
  };
}

function tightRemarks(
  overlaps: readonly Overlap[],
  runs: readonly Run[],
  needs: FastenerNeeds,
): readonly Remark[] {
  const shares = runs.map((r) => r.field.share);
  const least = Math.min(...shares);
  return least >= 1 - 1e-9 ? [] : [narrow(overlaps[shares.indexOf(least)] as Overlap, needs, least)];
}

/** A remark on an overlap on which only a part of the distances can be kept. */
export function narrow(
  { from, to }: Overlap,
  needs: FastenerNeeds,
  part: number,
  cut: 'cut' | 'free' = 'free',
): Remark {
  return remark('overlap-narrow', 'warning', {
    value: part * needs.edge,
    limit: needs.edge,
    unit: 'mm',
    values: {
      faces: [from.panel.id, to.panel.id],
      toBend: part * needs.bend,
      bend: needs.bend,
      more: cut === 'cut' ? null : (1 - part) * (needs.edge + needs.bend),
    },
    source: [...needs.edgeSource, ...needs.bendSource],
  });
}

/**
 * A remark on fasteners of which two on one overlap stand nearer than the least pitch.
 * @param most fasteners there is room for; null where their places are cut already
 */
export function closeRemarks(
  groups: readonly (readonly Fastener[])[],
  { pitch, pitchSource }: FastenerNeeds,
  most: number | null,
): readonly Remark[] {
  const gaps = groups.flatMap((g) =>
    g.flatMap((a, i) => g.slice(i + 1).map((b) => length3(sub3(a.at, b.at)))),
  );
  const least = Math.min(...gaps);
  if (least >= pitch - 1e-6) return [];
  return [
    remark('pitch-close', 'warning', {
      value: least,
      limit: pitch,
      unit: 'mm',
      values: { count: groups.flat().length, most },
      source: pitchSource,
    }),
  ];
}
