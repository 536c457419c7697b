import { clipPolygon } from '../plane/convex.js';
import { dot, type Point, sub, unit } from '../plane/point.js';
import type { FastenerNeeds } from './fastener.js';

/** An edge of the overlap that fasteners keep away from: at least `keep` from the line through `from` and `to`. mm */
export interface KeepOff {
  readonly from: Point;
  readonly to: Point;
  readonly keep: number;
  /** What stands there: a free edge, or a bend. */
  readonly what: 'edge' | 'bend';
}

/** Where fasteners may go on one overlap. */
export interface FastenerField {
  /** Convex, counter-clockwise. */
  readonly shape: readonly Point[];
  /** Part of each distance that could be kept: 1 when all are. */
  readonly share: number;
}

/** A run of fasteners on one overlap. */
export interface FastenerRun {
  readonly field: FastenerField;
  /** Along which they stand. */
  readonly along: Point;
  readonly from: number;
  readonly to: number;
}

/**
 * The field left of a convex overlap when every distance is kept; where that is nothing, all distances shrink in
 * step until something is left, and `share` says by how much.
 */
export function fieldOf(overlap: readonly Point[], keeps: readonly KeepOff[]): FastenerField {
  const cut = (share: number) => keeps.reduce((rest, k) => clipOff(rest, k, share), overlap);
  const whole = cut(1);
  if (whole.length > 0) return { shape: whole, share: 1 };
  let [low, high] = [0, 1];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (cut(middle).length > 0) low = middle;
    else high = middle;
  }
  return { shape: cut(low), share: low };
}

/** Counter-clockwise edges have material on their left. */
function clipOff(shape: readonly Point[], { from, to, keep }: KeepOff, share: number): readonly Point[] {
  if (shape.length === 0) return shape;
  const d = unit(sub(to, from));
  const n: Point = [-d[1], d[0]];
  return clipPolygon(shape, n, n[0] * from[0] + n[1] * from[1] + keep * share);
}

/** The run along the longest edge of an overlap, as far as the field reaches. */
export function runOf(overlap: readonly Point[], field: FastenerField): FastenerRun {
  const sides = overlap.map((p, i) => sub(overlap[(i + 1) % overlap.length] as Point, p));
  const longest = sides.reduce((a, b) => (b[0] ** 2 + b[1] ** 2 > a[0] ** 2 + a[1] ** 2 + 1e-6 ? b : a));
  const along = unit(longest);
  const reach = field.shape.map((p) => p[0] * along[0] + p[1] * along[1]);
  return { field, along, from: Math.min(...reach), to: Math.max(...reach) };
}

/** `count` points evenly from end to end of a run, in the middle across; one stands in the middle. */
export function pointsOn(run: FastenerRun, count: number): readonly Point[] {
  const { from, to } = run;
  return Array.from({ length: count }, (_, i) =>
    middleOf(run, count === 1 ? (from + to) / 2 : from + ((to - from) * i) / (count - 1)),
  );
}

/** The middle of a run's field, at distance `s` along it. */
export function middleOf({ field, along }: FastenerRun, s: number): Point {
  const across: Point = [-along[1], along[0]];
  const t = middleAt(field.shape, along, across, s);
  return [along[0] * s + across[0] * t, along[1] * s + across[1] * t];
}

/** Middle of the field across its run, at distance `s` along it. */
function middleAt(shape: readonly Point[], along: Point, across: Point, s: number): number {
  let [least, most] = [Infinity, -Infinity];
  for (let i = 0; i < shape.length; i++) {
    const a = shape[i] as Point;
    const b = (shape[i + 1] ?? shape[0]) as Point;
    const u = dot(a, along) - s;
    const v = dot(b, along) - s;
    const on = Math.abs(u) < 1e-7;
    if (!on && (u < 0 === v < 0 || Math.abs(v) < 1e-7)) continue;
    const from = dot(a, across);
    const cut = on ? from : from + ((dot(b, across) - from) * u) / (u - v);
    least = Math.min(least, cut);
    most = Math.max(most, cut);
  }
  return (least + most) / 2;
}

/** How many fasteners a run holds at a pitch. */
export const capacity = ({ from, to }: FastenerRun, pitch: number): number =>
  Math.max(1, Math.floor((to - from) / pitch + 1e-6) + 1);

/**
 * Fasteners for each run: a count asked for is shared out by length, at least one each; a pitch fills every run;
 * neither takes the usual pitch, but two where one would let the parts turn and two can stand at the least pitch.
 */
export function share(
  runs: readonly FastenerRun[],
  ask: { readonly count: number | null; readonly pitch: number | null },
  needs: Pick<FastenerNeeds, 'usualPitch' | 'pitch'>,
): readonly number[] {
  if (ask.count !== null) return shareOut(runs, ask.count);
  const counts = runs.map((r) => capacity(r, ask.pitch ?? needs.usualPitch));
  const [run] = runs;
  const alone = run !== undefined && runs.length === 1 && counts[0] === 1 && ask.pitch === null;
  return alone && capacity(run, needs.pitch) > 1 ? [2] : counts;
}

function shareOut(runs: readonly FastenerRun[], count: number): readonly number[] {
  // to a millionth of a millimetre, so that rounding does not choose between equals
  const length = (i: number) =>
    Math.round(((runs[i] as FastenerRun).to - (runs[i] as FastenerRun).from) * 1e6) / 1e6;
  const order = runs.map((_, i) => i).toSorted((a, b) => length(b) - length(a) || a - b);
  // fewer than there are overlaps: the longest get them
  if (count < runs.length) return runs.map((_, i) => (order.indexOf(i) < count ? 1 : 0));
  const counts = runs.map(() => 1);
  for (let left = count - runs.length; left > 0; left--) {
    // to the run whose fasteners stand furthest apart; the first of equals, so that nothing is left to chance
    const gaps = runs.map((_, i) => length(i) / (counts[i] as number));
    const next = gaps.indexOf(gaps.reduce((a, b) => (b > a + 1e-6 ? b : a)));
    counts[next] = (counts[next] as number) + 1;
  }
  return counts;
}
