import { remark } from '../errors/core-findings.js';
import type { Remark } from '../errors/finding.js';
import { COMMON_PRACTICE } from '../errors/source.js';
import { length3, sub3 } from '../fold/draft/space.js';
import type { FastenerAsk, FastenerNeeds } from '../joining/fastener.js';
import { capacity, type FastenerRun, fieldOf, pointsOn, runOf, share } from '../joining/layout.js';
import { clearRun } from './clear-run.js';
import { type Fastener, fastenerAt } from './fastener.js';
import { keepOffs } from './keep-off.js';
import { type Overlap, seenOn } from './overlap.js';
import type { Seated } from './types.js';

/** Fasteners with what to know about where they stand. */
export interface Spread {
  readonly fasteners: readonly Fastener[];
  readonly remarks: readonly Remark[];
}

/** What fasteners of a joint are spread by. */
export interface SpreadBy {
  readonly ask: FastenerAsk;
  readonly needs: FastenerNeeds;
  /** Fasteners of joints before it. */
  readonly before: readonly Fastener[];
}

/**
 * Spread fasteners over the overlaps of a joint, as a maker does: evenly, clear of edges and bends, and a pitch off
 * those that go through a common sheet already.
 */
export function spread(seated: Seated, overlaps: readonly Overlap[], by: SpreadBy): Spread {
  const { ask, needs } = by;
  const before = by.before.filter((f) => overlaps.some((o) => goesThrough(f, o)));
  const runs = overlaps.map((o) => runIn(o, needs));
  const stood = (asked: FastenerAsk) => {
    const counts = share(runs, asked, needs);
    const done: Fastener[] = [];
    overlaps.forEach((o, i) => {
      const others = before.concat(done).filter((f) => goesThrough(f, o));
      const places = others.map((f) => seenOn(o.from, f.at));
      const run = clearRun(runs[i] as FastenerRun, places, needs.pitch);
      if (run === null) return;
      const whole = run === runs[i] || asked.count !== null;
      const most = whole ? Infinity : capacity(run, asked.pitch ?? needs.usualPitch);
      const points = pointsOn(run, Math.min(counts[i] as number, most));
      for (const p of points) done.push(fastenerAt(seated, o, p, needs.holes));
    });
    return done;
  };
  const fasteners = stood(ask);
  const left = share(runs, ask, needs).reduce((a, b) => a + b, 0) - fasteners.length;
  const works = () => {
    const capacities = runs.reduce((sum, r) => sum + capacity(r, needs.pitch), 0);
    let count = Math.min(fasteners.length - 1, capacities);
    while (count > 1 && closeRemarks(stood({ ...ask, count, pitch: null }), needs, null).length > 0)
      count -= 1;
    return count;
  };
  return {
    fasteners,
    remarks: [
      ...tightRemarks(overlaps, runs, needs),
      ...(left > 0 ? [leftRemark(left, needs)] : []),
      ...closeRemarks(fasteners, needs, works),
    ],
  };
}

/** Where fasteners may stand in an overlap. */
const runIn = (o: Overlap, needs: FastenerNeeds): FastenerRun =>
  runOf(o.shape, fieldOf(o.shape, keepOffs(o, needs)));

/** True for a fastener through one of the two panels of an overlap. */
const goesThrough = ({ on }: Fastener, { from, to }: Overlap) =>
  on.some((e) => [from, to].some((f) => f.placed.piece === e.piece && f.panel.id === e.panel));

/** Parts that hang on one fastener turn about it. */
export function turnRemarks(
  [only, ...others]: readonly Fastener[],
  overlaps: readonly Overlap[],
  needs: FastenerNeeds,
): readonly Remark[] {
  if (only === undefined || others.length > 0) return [];
  const overlap = overlaps.find((o) => goesThrough(only, o));
  if (overlap === undefined) return [];
  const { from, to } = overlap;
  const { pitch, pitchSource } = needs;
  const run = runIn(overlap, needs);
  const room = run.to - run.from;
  return [
    remark('joint-turns', 'warning', {
      value: 1,
      limit: 2,
      values: { faces: [from.panel.id, to.panel.id], more: room >= pitch - 1e-6 ? null : pitch - room },
      source: [...COMMON_PRACTICE, ...pitchSource],
    }),
  ];
}

function tightRemarks(
  overlaps: readonly Overlap[],
  runs: readonly FastenerRun[],
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

/** A remark on fasteners that found no place a pitch off the others. */
function leftRemark(left: number, { pitch, pitchSource }: FastenerNeeds): Remark {
  return remark('fastener-left-out', 'note', {
    value: left,
    limit: 0,
    values: { pitch },
    source: pitchSource,
  });
}

/**
 * A remark on fasteners of which two through a common sheet stand nearer than the least pitch.
 * @param most finds how many there is room for; null where their places are cut already
 */
export function closeRemarks(
  fasteners: readonly Fastener[],
  { pitch, pitchSource }: FastenerNeeds,
  most: (() => number) | null,
): readonly Remark[] {
  let least = Infinity;
  fasteners.forEach((a, i) => {
    for (const b of fasteners.slice(i + 1))
      if (shareSheet(a, b)) least = Math.min(least, length3(sub3(a.at, b.at)));
  });
  if (least >= pitch - 1e-6) return [];
  return [
    remark('pitch-close', 'warning', {
      value: least,
      limit: pitch,
      unit: 'mm',
      values: { count: fasteners.length, most: most?.() ?? null },
      source: pitchSource,
    }),
  ];
}

const shareSheet = (a: Fastener, b: Fastener) =>
  a.on.some((e) => b.on.some((f) => e.piece === f.piece && e.panel === f.panel));
