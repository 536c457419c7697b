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
  return meetsOnWay(a, 0, 0, b);
}

/**
 * True when a convex polygon shares more than rims with a still one somewhere on a straight way, mm. No outline of what it
 * passes over is made: the axes that may part the two are those of either polygon, of their boxes, and the one across the
 * way (separating axes of a Minkowski sum: Gottschalk, Lin, Manocha 1996).
 */
export function meetsOnWay(moving: Convex, dx: number, dz: number, still: Convex): boolean {
  if (boxesApart(moving, dx, dz, still)) return false;
  if (dx !== 0 && dz !== 0 && apartAcross(moving, dx, dz, still)) return false;
  return !parted(moving, dx, dz, still) && !parted(still, -dx, -dz, moving);
}

/** True when the boxes round them are apart, the moving one's drawn out along its way. */
function boxesApart(moving: Convex, dx: number, dz: number, still: Convex): boolean {
  return (
    most(moving, 1, 0) + Math.max(0, dx) <= -most(still, -1, 0) ||
    most(moving, -1, 0) + Math.max(0, -dx) <= -most(still, 1, 0) ||
    most(moving, 0, 1) + Math.max(0, dz) <= -most(still, 0, -1) ||
    most(moving, 0, -1) + Math.max(0, -dz) <= -most(still, 0, 1)
  );
}

/** True when they pass each other beside the way. */
const apartAcross = (moving: Convex, dx: number, dz: number, still: Convex): boolean =>
  most(moving, dz, -dx) <= -most(still, -dz, dx) || most(moving, -dz, dx) <= -most(still, dz, -dx);

/** True when a side of `a`, or where it comes to on its way, parts the two. */
function parted(a: Convex, dx: number, dz: number, b: Convex): boolean {
  let p = a[a.length - 1] as Point;
  for (const q of a) {
    const nx = q[1] - p[1];
    const ny = p[0] - q[0];
    const edge = nx * p[0] + ny * p[1] + Math.max(0, nx * dx + ny * dz);
    if (Math.abs(nx) + Math.abs(ny) >= 1e-12 && edge <= -most(b, -nx, -ny)) return true;
    p = q;
  }
  return false;
}

/** How far a shape reaches in a direction, times its length. Corners by number: nothing else is asked so often. */
function most(shape: Convex, x: number, z: number): number {
  let reach = -Infinity;
  for (let i = 0; i < shape.length; i++) {
    const p = shape[i] as Point;
    const at = p[0] * x + p[1] * z;
    if (at > reach) reach = at;
  }
  return reach;
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
