import { add, cross, mix, type Point, SAME, same, scale, size, sub, unit } from './point.js';

/**
 * A simple counter-clockwise polygon in convex pieces: itself when convex, else cut on from a corner that turns
 * right, along the side that leads to it, again and again. Pieces share no area and leave none out.
 */
export function convexPieces(shape: readonly Point[]): readonly (readonly Point[])[] {
  const at = (i: number) => shape[i % shape.length] as Point;
  const n = shape.length;
  const right = shape.findIndex((_, i) => turn(at(i + n - 1), at(i), at(i + 1)) < -RIGHT);
  if (right < 0) return [shape];
  const corner = at(right);
  const way = unit(sub(corner, at(right + n - 1)));
  const { side, to } = firstSide(shape, right, way);
  // from the corner round to the cut, and from the cut round to the corner
  const round = (from: number, count: number) => Array.from({ length: count }, (_, k) => at(from + k));
  const count = (side - right + n) % n;
  const pieces = [
    [...round(right, count + 1), to],
    [to, ...round(side + 1, n - count)],
  ];
  const parts = pieces.map(withoutTwins).filter((p) => p.length > 2);
  // a shape that crosses itself never ends: what does not get simpler is left as it is
  return parts.length < 2 || parts.some((p) => p.length > n) ? [shape] : parts.flatMap(convexPieces);
}

const RIGHT = 1e-9;

/** Sine of the turn at the middle of three points, positive to the left. */
function turn(a: Point, b: Point, c: Point): number {
  const [u, v] = [sub(b, a), sub(c, b)];
  return cross(u, v) / (size(u) * size(v));
}

/** The side a ray from a corner meets first, by the index of its start, and where; a corner it nearly meets is taken. */
function firstSide(shape: readonly Point[], from: number, way: Point): { side: number; to: Point } {
  const corner = shape[from] as Point;
  let best = { side: from, to: corner, far: Infinity };
  shape.forEach((p, i) => {
    const q = shape[(i + 1) % shape.length] as Point;
    if (i === from || (i + 1) % shape.length === from) return;
    const d = sub(q, p);
    const det = cross(way, d);
    if (Math.abs(det) < RIGHT * size(d)) return;
    const r = sub(p, corner);
    const [far, t] = [cross(r, d) / det, cross(r, way) / det];
    const reach = SAME / size(d);
    if (far < SAME || t < -reach || t > 1 + reach || far >= best.far - SAME) return;
    const to = add(corner, scale(way, far));
    best = { side: i, to: same(to, p) ? p : same(to, q) ? q : mix(p, q, t), far };
  });
  return best;
}

const withoutTwins = (shape: readonly Point[]): readonly Point[] =>
  shape.filter((p, i) => !same(p, shape[(i + 1) % shape.length] as Point));

/** Intersection of a polygon with a convex counter-clockwise one; empty when they share no area. */
export function intersectConvex(shape: readonly Point[], convex: readonly Point[]): readonly Point[] {
  return convex.reduce<readonly Point[]>((rest, a, i) => {
    const b = convex[(i + 1) % convex.length] as Point;
    const l = Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2);
    const n: Point = [-(b[1] - a[1]) / l, (b[0] - a[0]) / l];
    return clipPolygon(rest, n, n[0] * a[0] + n[1] * a[1]);
  }, shape);
}

/** The part of a convex polygon where n·p ≥ c; empty when that has no area. */
export function clipPolygon(shape: readonly Point[], n: Point, c: number): readonly Point[] {
  const kept = clipRing(shape, (p) => n[0] * p[0] + n[1] * p[1] - c, mix);
  const distinct = kept.filter((p, i) => {
    const q = kept[(i + 1) % kept.length] as Point;
    return Math.abs(p[0] - q[0]) + Math.abs(p[1] - q[1]) > 1e-9;
  });
  return distinct.length < 3 ? [] : distinct;
}

/** The part of a ring of points, in the plane or in space, where `depth` is not negative. */
export function clipRing<P>(
  ring: readonly P[],
  depth: (p: P) => number,
  between: (p: P, q: P, t: number) => P,
): readonly P[] {
  const [first] = ring;
  if (first === undefined) return ring;
  const start = depth(first);
  const kept: P[] = [];
  let a = start;
  for (let i = 0; i < ring.length; i++) {
    const [p, q] = [ring[i] as P, ring[i + 1] ?? first];
    const b = i + 1 < ring.length ? depth(q) : start;
    if (a >= 0) kept.push(p);
    if (a < 0 !== b < 0 && a !== b) kept.push(between(p, q, a / (a - b)));
    a = b;
  }
  return kept;
}

/** Signed area of a polygon, positive counter-clockwise. */
export function polygonArea(shape: readonly Point[]): number {
  let area = 0;
  for (let i = 0; i < shape.length; i++) {
    const [p, q] = [shape[i] as Point, (shape[i + 1] ?? shape[0]) as Point];
    area += (p[0] * q[1] - q[0] * p[1]) / 2;
  }
  return area;
}

/** Counter-clockwise hull of points in the plane (monotone chain: Andrew 1979). */
export function convexHull(points: readonly Point[]): readonly Point[] {
  const sorted = points.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  if (sorted.length < 3) return sorted;
  const hull = lowerChain(sorted);
  for (const p of lowerChain(sorted.reverse())) hull.push(p);
  return hull;
}

/** The chain of a hull from the first to the last of sorted points, which is left out: the other chain begins with it. */
function lowerChain(sorted: readonly Point[]): Point[] {
  const chain: Point[] = [];
  let n = 0;
  for (const p of sorted) {
    while (n > 1) {
      const [o, a] = [chain[n - 2] as Point, chain[n - 1] as Point];
      if ((a[0] - o[0]) * (p[1] - o[1]) - (a[1] - o[1]) * (p[0] - o[0]) > 0) break;
      n -= 1;
    }
    chain[n++] = p;
  }
  chain.length = n - 1;
  return chain;
}
