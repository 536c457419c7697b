import type { Box, FlatPattern, Point } from '@tinwright/core';
import { flattened } from '@tinwright/core/internal';
import type { Dims } from '../page/dims.js';
import { type Features, runsAcross, type StraightSide } from './features.js';
import { buried } from './sight.js';

/**
 * An ordinate dimension: a distance from the datum corner along x (axis 0) or y (axis 1), told on the low side of the
 * pattern (below, left) or on the high one (above, right). `from` is where its extension line starts. mm of the pattern
 */
export interface Ordinate {
  readonly axis: 0 | 1;
  readonly value: number;
  readonly text: string;
  readonly side: 'low' | 'high';
  readonly from: Point;
}

const SAGITTA = 0.005; // mm
const LITTLE = 0.1; // mm; sizes that print alike within it are one
const SAME = 1e-6;

/**
 * Ordinates of everything a pattern's outline and bends turn at, from its lower left corner; each is told on the side
 * it can be seen from without looking through metal, the low one first.
 */
export function ordinatesOf(flat: FlatPattern, features: Features, dims: Dims): readonly Ordinate[] {
  const outline = flattened(flat.outline, SAGITTA);
  return ([0, 1] as const).flatMap((axis) =>
    groups(turningPoints(flat, features, axis), axis, dims).map((points) =>
      told(points, axis, outline, dims, flat.blank.max[axis === 0 ? 1 : 0]),
    ),
  );
}

/** Points whose coordinate along an axis somebody needs. */
function turningPoints(
  { bends, blank }: FlatPattern,
  { sides, rounds }: Features,
  axis: 0 | 1,
): readonly Point[] {
  const other = axis === 0 ? 1 : 0;
  const onRound = (p: Point) =>
    rounds.some((r) => Math.abs(Math.hypot(p[0] - r.centre[0], p[1] - r.centre[1]) - r.radius) < SAME);
  const needed = (s: StraightSide, p: Point) => !runsAcross(s, other) || !onRound(p);
  const bent = bends
    .map((b): StraightSide => ({ from: b.line[0], to: b.line[1] }))
    .filter((b) => !runsAcross(b, other));
  const ends = [...sides, ...bent].flatMap((s) => [s.from, s.to].filter((p) => needed(s, p)));
  return [...ends, blank.min, blank.max];
}

/** Groups of points inside a box that turn at one printed value along an axis, by value. */
export function turnsIn(
  flat: FlatPattern,
  features: Features,
  axis: 0 | 1,
  dims: Dims,
  { min, max }: Box,
): readonly (readonly Point[])[] {
  const inside = (p: Point) => p.every((v, k) => v > (min[k] as number) && v < (max[k] as number));
  return groups(turningPoints(flat, features, axis).filter(inside), axis, dims);
}

/** Points in groups that share a printed ordinate, by value. */
function groups(points: readonly Point[], axis: 0 | 1, dims: Dims): readonly (readonly Point[])[] {
  const found: Point[][] = [];
  for (const p of points.toSorted((a, b) => a[axis] - b[axis])) {
    const last = found.at(-1)?.at(-1);
    const alike =
      last !== undefined &&
      (p[axis] - last[axis] < SAME ||
        (p[axis] - last[axis] < LITTLE && dims.text(p[axis]) === dims.text(last[axis])));
    if (alike) found.at(-1)?.push(p);
    else found.push([p]);
  }
  return found;
}

function told(
  points: readonly Point[],
  axis: 0 | 1,
  outline: readonly Point[],
  dims: Dims,
  height: number,
): Ordinate {
  const other = axis === 0 ? 1 : 0;
  const by = points.toSorted((a, b) => a[other] - b[other]);
  const [low, high] = [by[0] as Point, by.at(-1) as Point];
  const clear = (p: Point, side: 'low' | 'high') =>
    buried(outline, axis, p[axis]).every(([from, to]) =>
      side === 'low' ? from > p[other] - SAME : to < p[other] + SAME,
    );
  const tell = (p: Point, side: 'low' | 'high'): Ordinate => ({
    axis,
    value: p[axis],
    text: dims.text(p[axis]),
    side,
    from: p,
  });
  if (clear(low, 'low')) return tell(low, 'low');
  if (clear(high, 'high')) return tell(high, 'high');
  // seen from nowhere: its line starts where the metal ends
  const below = buried(outline, axis, low[axis])[0]?.[0] ?? 0;
  const above = buried(outline, axis, high[axis]).at(-1)?.[1] ?? height;
  const start = (p: Point, at: number): Point => (axis === 0 ? [p[0], at] : [at, p[1]]);
  return below <= height - above ? tell(start(low, below), 'low') : tell(start(high, above), 'high');
}
