import earcut from 'earcut';
import { cross, type Point, sub } from './point.js';

/** A polygon less its holes in convex pieces: itself when convex and whole, triangles otherwise. */
export function convexPieces(
  shape: readonly Point[],
  holes: readonly (readonly Point[])[] = [],
): readonly (readonly Point[])[] {
  if (holes.length === 0 && isConvex(shape)) return [shape];
  const points = [...shape, ...holes.flat()];
  let next = shape.length;
  const starts = holes.map((hole) => {
    next += hole.length;
    return next - hole.length;
  });
  const index = earcut(points.flat(), starts);
  return Array.from({ length: index.length / 3 }, (_, k) =>
    [0, 1, 2].map((j) => points[index[3 * k + j] as number] as Point),
  );
}

/** True for a counter-clockwise polygon that turns left, or not at all, at every corner. */
export function isConvex(shape: readonly Point[]): boolean {
  const at = (i: number) => shape[i % shape.length] as Point;
  return shape.every((_, i) => cross(sub(at(i + 1), at(i)), sub(at(i + 2), at(i + 1))) >= -1e-9);
}

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
  const depth = shape.map((p) => n[0] * p[0] + n[1] * p[1] - c);
  const kept = shape.flatMap((p, i): readonly Point[] => {
    const j = (i + 1) % shape.length;
    const [a, b] = [depth[i] as number, depth[j] as number];
    const q = shape[j] as Point;
    const t = a / (a - b);
    const crossing: readonly Point[] =
      a < 0 !== b < 0 && a !== b ? [[p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t]] : [];
    return a >= 0 ? [p, ...crossing] : crossing;
  });
  const distinct = kept.filter((p, i) => {
    const q = kept[(i + 1) % kept.length] as Point;
    return Math.abs(p[0] - q[0]) + Math.abs(p[1] - q[1]) > 1e-9;
  });
  return distinct.length < 3 ? [] : distinct;
}

/** Signed area of a polygon, positive counter-clockwise. */
export function polygonArea(shape: readonly Point[]): number {
  return shape.reduce((s, p, i) => {
    const q = shape[(i + 1) % shape.length] as Point;
    return s + (p[0] * q[1] - q[0] * p[1]) / 2;
  }, 0);
}
