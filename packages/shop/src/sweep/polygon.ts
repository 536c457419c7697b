import type { Point } from '@tinwright/core';
import { convexHull } from '@tinwright/core/internal';

/** A convex polygon, counter-clockwise. mm */
export type Convex = readonly Point[];

const OCTAGON: readonly Point[] = Array.from({ length: 8 }, (_, k): Point => {
  const turn = (Math.PI * (2 * k + 1)) / 8;
  // its sides, not its corners, lie one away: nothing is grown by less than asked
  return [Math.cos(turn) / Math.cos(Math.PI / 8), Math.sin(turn) / Math.cos(Math.PI / 8)];
});

/** A convex polygon with a margin round it: everything within `by` mm, corners a little more. */
export function grown(shape: Convex, by: number): Convex {
  if (by === 0) return shape;
  return convexHull(shape.flatMap(([x, y]) => OCTAGON.map(([u, v]): Point => [x + u * by, y + v * by])));
}

/** How far two convex polygons reach into each other along the side that parts them soonest, mm; 0 or less when apart. */
export function overlap(a: Convex, b: Convex): number {
  return Math.min(apart(a, b), apart(b, a));
}

/** True when two convex polygons share more than their rims. */
export function meet(a: Convex, b: Convex): boolean {
  return !parted(a, b) && !parted(b, a);
}

/** True when a side of `a` parts the two. */
function parted(a: Convex, b: Convex): boolean {
  return a.some(([px, py], i) => {
    const [qx, qy] = a[(i + 1) % a.length] as Point;
    const [nx, ny] = [qy - py, px - qx];
    if (Math.abs(nx) + Math.abs(ny) < 1e-12) return false;
    const edge = nx * px + ny * py;
    return b.every(([x, y]) => nx * x + ny * y >= edge);
  });
}

/** Overlap along the outward normals of the sides of `a`. */
function apart(a: Convex, b: Convex): number {
  let least = Infinity;
  a.forEach((p, i) => {
    const q = a[(i + 1) % a.length] as Point;
    const l = Math.hypot(q[0] - p[0], q[1] - p[1]);
    if (l < 1e-12) return;
    const [nx, ny] = [(q[1] - p[1]) / l, (p[0] - q[0]) / l];
    const edge = nx * p[0] + ny * p[1];
    let deepest = -Infinity;
    for (const [x, y] of b) deepest = Math.max(deepest, edge - (nx * x + ny * y));
    least = Math.min(least, deepest);
  });
  return least;
}

/** A polygon turned about the origin, counter-clockwise. */
export function turned(shape: Convex, angle: number): Convex {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return shape.map(([x, y]): Point => [c * x - s * y, s * x + c * y]);
}

/** A rectangle by its least and greatest corner. */
export function rectangle(x0: number, y0: number, x1: number, y1: number): Convex {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}
