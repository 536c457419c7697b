import type { Remark } from '../errors/finding.js';
import { inWords } from '../errors/problem.js';
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
  const fasteners = overlaps.flatMap((o, i) => {
    const run = runs[i] as Run;
    return pointsOn(run, counts[i] as number).map((p) => fastenerAt(seated, o, p, run.along, needs.holes));
  });
  return {
    fasteners,
    remarks: [...tightRemarks(overlaps, runs, needs), ...pitchRemarks(runs, counts, needs)],
  };
}

function tightRemarks(
  overlaps: readonly Overlap[],
  runs: readonly Run[],
  needs: FastenerNeeds,
): readonly Remark[] {
  const tight = runs.findIndex((r) => r.field.share < 1 - 1e-9);
  return tight < 0 ? [] : [narrow(overlaps[tight] as Overlap, needs, (runs[tight] as Run).field.share)];
}

/** Said of an overlap on which only a part of the distances can be kept. */
export function narrow({ from, to }: Overlap, needs: FastenerNeeds, part: number): Remark {
  return {
    code: 'overlap-narrow',
    severity: 'warning',
    value: part * needs.edge,
    limit: needs.edge,
    unit: 'mm',
    message: (say) =>
      `${from.panel.id} over ${to.panel.id} is narrow: ${say.size(part * needs.edge)} to edges and ${say.size(part * needs.bend)} to bends can be kept, ${say.size(needs.edge)} and ${say.size(needs.bend)} wanted`,
    source: (say) => `${inWords(needs.edgeSource, say)}; ${inWords(needs.bendSource, say)}`,
    fix: (say) =>
      `make them overlap by ${say.least((1 - part) * (needs.edge + needs.bend))} more, or take a smaller fastener`,
  };
}

function pitchRemarks(
  runs: readonly Run[],
  counts: readonly number[],
  needs: FastenerNeeds,
): readonly Remark[] {
  const gaps = runs.map((r, i) =>
    (counts[i] as number) < 2 ? Infinity : (r.to - r.from) / ((counts[i] as number) - 1),
  );
  const least = Math.min(...gaps);
  if (least >= needs.pitch - 1e-6) return [];
  const most = runs.reduce((s, r) => s + capacity(r, needs.pitch), 0);
  return [
    {
      code: 'pitch-close',
      severity: 'warning',
      value: least,
      limit: needs.pitch,
      unit: 'mm',
      message: (say) =>
        `${counts.reduce((a, b) => a + b, 0)} fasteners stand ${say.size(least)} apart, ${say.least(needs.pitch)} at least; ${most} can be met`,
      source: needs.pitchSource,
      fix: `ask for ${most} or fewer`,
    },
  ];
}
