import { lineLength, spanOf } from '../part/line.js';
import type { Stretch } from './station.js';

/** A closed stretch along the line. mm */
export type Interval = readonly [from: number, to: number];

/** An interval with a margin at either end. */
export const widened = ([from, to]: Interval, margin: number): Interval => [from - margin, to + margin];

const ROOM = 10; // mm of the machine left for what stands beside the tools; judgement

/** Stretches that overlap made one, in order. */
export function merged(intervals: readonly Interval[]): readonly Interval[] {
  const found: [number, number][] = [];
  for (const [a, b] of intervals.toSorted((p, q) => p[0] - q[0])) {
    const last = found.at(-1);
    if (last !== undefined && a <= last[1]) last[1] = Math.max(last[1], b);
    else found.push([a, b]);
  }
  return found;
}

/**
 * Where tools may stand and how much they have to cover: the bent material less what is in the way; or the stretch
 * that stays bare, when more than the gaps allow would be left uncovered.
 * @param length of the machine: what stands beside the tools has to find room on it too
 */
export function stretchesFor(
  spans: readonly Interval[],
  taken: readonly Interval[],
  gaps: { readonly end: number; readonly inner: number },
  length: number,
): { readonly stretches: readonly Stretch[] } | { readonly bare: Interval } {
  const blocked = merged(taken);
  const line = spanOf(spans);
  const bare = blocked
    .map(([a, b]): Interval => [Math.max(a, line[0]), Math.min(b, line[1])])
    .find(([a, b]) => b - a > (a <= line[0] || b >= line[1] ? gaps.end : gaps.inner) + 1e-9);
  if (bare !== undefined) return { bare };
  const edges = [-Infinity, ...blocked.flat(), Infinity];
  const free = Array.from(
    { length: edges.length / 2 },
    (_, i): Interval => [edges[2 * i] as number, edges[2 * i + 1] as number],
  );
  const needed = free.filter(([a, b]) => Math.min(b, line[1]) - Math.max(a, line[0]) > 1e-9);
  // a line no longer than a gap is not bent with nothing over it
  if (needed.length === 0) return { bare: line };
  return {
    stretches: needed.map(([from, to], i): Stretch => {
      const covered = Math.min(to, line[1]) - Math.max(from, line[0]);
      // what lies bare at either end may be at most the end gap, counted from the line's own end
      const slack = [from - line[0], line[1] - to].map((off) =>
        Math.max(0, gaps.end - Math.max(0, off)),
      ) as unknown as readonly [number, number];
      return {
        from,
        to,
        least: Math.max(0, covered - slack[0] - slack[1]),
        slack,
        covered,
        past: [
          i === 0 ? Math.max(0, from - line[0]) : null,
          i === needed.length - 1 ? Math.max(0, line[1] - to) : null,
        ],
        most: Math.min(to - from, Number.isFinite(from) || Number.isFinite(to) ? length - ROOM : Infinity),
      };
    }),
  };
}

/** How pieces of tool stand in a stretch: gaps between them, and what they leave bare of it to either side. mm */
export interface Mounted {
  readonly gap: number;
  readonly wide: number;
  readonly bare: readonly [number, number];
}

/**
 * Pieces in the middle of what they cover, as far as neither end is left too bare; with equal gaps when they have to
 * reach further than they are wide. @param inner greatest gap between two pieces, mm
 */
export function mounted(
  pieces: readonly number[],
  { least, covered, slack }: Pick<Stretch, 'least' | 'covered' | 'slack'>,
  inner: number,
): Mounted {
  const sum = pieces.reduce((a, b) => a + b, 0);
  const gap = pieces.length > 1 ? Math.min(inner, Math.max(0, (least - sum) / (pieces.length - 1))) : 0;
  const wide = sum + gap * (pieces.length - 1);
  const left = Math.max(0, covered - wide);
  const first = Math.min(Math.max(left / 2, left - slack[1]), slack[0]);
  return { gap, wide, bare: [first, left - first] };
}

/** What of a line is bare at its ends beside pieces in a stretch, that past the stretch too; 0 where the line goes on. mm */
export const bareEnds = (
  { past: [left, right] }: Pick<Stretch, 'past'>,
  { bare: [first, last] }: Pick<Mounted, 'bare'>,
): Mounted['bare'] => [left === null ? 0 : left + first, right === null ? 0 : right + last];

/**
 * What of a line would stay bare, against what may; no figures where that is all of it, or the line is no longer than that:
 * then no tool has room there. mm
 */
export function bareBy(
  [from, to]: Interval,
  spans: readonly Interval[],
  limit: number,
): { readonly value?: number; readonly limit?: number } {
  const value = to - from;
  const line = lineLength({ spans });
  return value > limit && value < line - 1e-6 ? { value, limit } : {};
}
