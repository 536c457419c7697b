import type { Point } from '@tinwright/core';
import { fail } from '@tinwright/core/internal';
import type { ReadStroke } from './chains.js';
import type { DrawnPath } from './svg-arcs.js';

const SAG = 0.01; // mm a chord may lie off a curve
const MOST_CHORDS = 20_000; // of one curve

/**
 * Straight strokes of a path and chords of its curves, mm, y up.
 * @throws JobError for a curve of kilometres
 */
export function strokesOf(path: DrawnPath, mm: number): readonly ReadStroke[] {
  const strokes: ReadStroke[] = [];
  let [at, start]: [Point, Point] = [
    [0, 0],
    [0, 0],
  ];
  const on = ([x, y]: Point): Point => [x * mm, -y * mm];
  const line = (to: Point) => {
    if (to[0] !== at[0] || to[1] !== at[1]) strokes.push({ from: on(at), to: on(to), bulge: 0 });
    at = to;
  };
  path.iterate(([op, ...v]) => {
    const p = v as number[];
    const end: Point = [p.at(-2) ?? 0, p.at(-1) ?? 0];
    if (op === 'M') [at, start] = [end, end];
    else if (op === 'Z' || op === 'z') line(start);
    else if (op === 'H') line([p[0] as number, at[1]]);
    else if (op === 'V') line([at[0], p[0] as number]);
    else if (op === 'L') line(end);
    else for (const to of chords(at, p, mm)) line(to);
  });
  return strokes;
}

/** Points along a Bézier curve, the last its end. */
function chords(from: Point, v: readonly number[], mm: number): readonly Point[] {
  const controls: Point[] = [from];
  for (let i = 0; i + 1 < v.length; i += 2) controls.push([v[i] as number, v[i + 1] as number]);
  const bend = controls.slice(2).reduce((most, p, i) => {
    const [a, b] = [controls[i] as Point, controls[i + 1] as Point];
    return Math.max(most, Math.hypot(p[0] - 2 * b[0] + a[0], p[1] - 2 * b[1] + a[1]));
  }, 0);
  const degree = controls.length - 1;
  // chords of n equal steps lie within degree (degree − 1) / 8 n² of the second differences
  const n = Math.max(1, Math.ceil(Math.sqrt((degree * (degree - 1) * bend * mm) / (8 * SAG))));
  if (!(n <= MOST_CHORDS))
    return fail('drawing-large', [], 'the drawing holds a curve of kilometres', 'Check its unit and sizes');
  return Array.from({ length: n }, (_, i) =>
    i === n - 1 ? (controls.at(-1) as Point) : pointAt(controls, (i + 1) / n),
  );
}

function pointAt(controls: readonly Point[], t: number): Point {
  if (controls.length === 1) return controls[0] as Point;
  const next = controls.slice(1).map((p, i): Point => {
    const q = controls[i] as Point;
    return [q[0] + (p[0] - q[0]) * t, q[1] + (p[1] - q[1]) * t];
  });
  return pointAt(next, t);
}
