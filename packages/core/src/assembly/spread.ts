import type { Remark } from '../errors/finding.js';
import { inWords } from '../errors/problem.js';
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
    remarks: [
      ...tightRemarks(overlaps, runs, needs),
      ...closeRemarks(groups, needs).map((r) => ({ ...r, fix: `ask for ${most} or fewer` })),
    ],
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

/** Said of fasteners of which two on one overlap stand nearer than the least pitch. */
export function closeRemarks(
  groups: readonly (readonly Fastener[])[],
  { pitch, pitchSource }: FastenerNeeds,
): readonly Remark[] {
  const gaps = groups.flatMap((g) =>
    g.flatMap((a, i) => g.slice(i + 1).map((b) => length3(sub3(a.at, b.at)))),
  );
  const least = Math.min(...gaps);
  if (least >= pitch - 1e-6) return [];
  return [
    {
      code: 'pitch-close',
      severity: 'warning',
      value: least,
      limit: pitch,
      unit: 'mm',
      message: (say) =>
        `two of its ${groups.flat().length} fasteners stand ${say.size(least)} apart, ${say.least(pitch)} at least`,
      source: pitchSource,
      fix: '',
    },
  ];
}
