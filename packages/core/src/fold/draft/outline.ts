import { suggestion } from '../../errors/nearest.js';
import { fail } from '../../errors/problem.js';
import { distance, mix, type Point, SAME } from '../../plane/point.js';
import type { Edge, Outline } from './tree.js';

/** Keep the points where x·`x` + y·`y` ≥ `c`. */
export interface HalfPlane {
  readonly x: number;
  readonly y: number;
  readonly c: number;
}

/**
 * Rectangle from the origin, edges named by the compass: south y = 0, north y = `width`, west x = 0,
 * east x = `length`. mm, both above 0.
 */
export function rectangle(length: number, width: number): Outline {
  return [
    { name: 'south', from: [0, 0] },
    { name: 'east', from: [length, 0] },
    { name: 'north', from: [length, width] },
    { name: 'west', from: [0, width] },
  ];
}

/** Outline from corner points, counter-clockwise; `names[i]` is the edge from point i to the next. */
export function polygon(points: readonly Point[], names: readonly string[]): Outline {
  return points.map((from, i) => ({ name: names[i] ?? `edge-${i + 1}`, from }));
}

/**
 * Cut the corner between two neighbouring edges with a straight cut, `leg` back along both. The new edge is called
 * `name`; a leg of 0 leaves the corner. mm
 */
export function nip(
  outline: Outline,
  between: readonly [string, string],
  leg: number,
  name: string,
): Outline {
  if (leg === 0) return outline;
  const [i, j] = between.map((edge) => edgeIndex(outline, edge)) as [number, number];
  const k = (i + 1) % outline.length === j ? j : i; // index of the edge after the corner
  const n = outline.length;
  const at = (m: number) => (outline[(m + n) % n] as Edge).from;
  const towards = (q: Point): Point => mix(at(k), q, leg / distance(at(k), q));
  return [
    ...outline.slice(0, k),
    { name, from: towards(at(k - 1)) },
    { name: (outline[k] as Edge).name, from: towards(at(k + 1)) },
    ...outline.slice(k + 1),
  ];
}

/** Index of a named edge. @throws JobError `edge-unknown` naming the edges there are */
export function edgeIndex(outline: Outline, name: string): number {
  const i = outline.findIndex((e) => e.name === name);
  if (i >= 0) return i;
  const names = outline.map((e) => e.name);
  return fail('edge-unknown', [], `there is no edge "${name}"`, suggestion(name, names));
}

/** The part of the outline in a half plane; a new edge along the cut is called `name`. Empty when nothing stays. */
export function clip(outline: Outline, half: HalfPlane, name: string): Outline {
  const { x, y, c } = half;
  const size = Math.sqrt(x * x + y * y);
  const depth = ({ from }: Edge) => (x * from[0] + y * from[1] - c) / size;
  if (outline.every((edge) => depth(edge) >= -SAME)) return outline;
  const kept: Edge[] = [];
  let b = depth(outline[0] as Edge);
  for (let i = 0; i < outline.length; i++) {
    const edge = outline[i] as Edge;
    const next = outline[(i + 1) % outline.length] as Edge;
    const a = b;
    b = depth(next);
    const p = edge.from;
    const q = next.from;
    if (a >= -SAME) {
      kept.push(edge);
      if (b < -SAME) kept.push({ name, from: a < SAME ? p : crossing(p, q, a, b) });
    } else if (b >= SAME) kept.push({ name: edge.name, from: crossing(p, q, a, b) });
  }
  const tidy = kept.filter((e, i) => distance(e.from, (kept[(i + 1) % kept.length] as Edge).from) >= SAME);
  return tidy.length < 3 ? [] : tidy;
}

/** Between two points that lie `a` and `b` off a line, where it is crossed. */
const crossing = (p: Point, q: Point, a: number, b: number): Point => [
  p[0] + ((q[0] - p[0]) * a) / (a - b),
  p[1] + ((q[1] - p[1]) * a) / (a - b),
];

/** Half plane on the material side of an edge, moved in by `inset`. */
export function inside(outline: Outline, i: number, inset: number): HalfPlane {
  const p = (outline[i] as Edge).from;
  const q = (outline[(i + 1) % outline.length] as Edge).from;
  const l = distance(p, q);
  const n: Point = [-(q[1] - p[1]) / l, (q[0] - p[0]) / l];
  return { x: n[0], y: n[1], c: n[0] * p[0] + n[1] * p[1] + inset };
}
