import type { Point, Vec3 } from '@tinwright/core';
import { type Prism, prismBetween } from '@tinwright/core/internal';
import { apply, type Rigid } from './rigid.js';

/** A panel, or a tool, as convex prisms in the machine. */
export interface ReplaySolid {
  readonly id: string;
  readonly prisms: readonly Prism[];
}

/** A panel as convex pieces: a fan is enough where the outline is convex; else its triangles by ears. */
export function prismsOf(shape: readonly Point[], thickness: number, pose: Rigid): readonly Prism[] {
  return ears(shape).map((piece) => {
    const ring = (z: number) => piece.map(([x, y]): Vec3 => apply(pose, [x, y, z]));
    return prismBetween(ring(0), ring(thickness));
  });
}

/** Triangles of a simple counter-clockwise polygon, by cutting ears. */
export function ears(shape: readonly Point[]): readonly (readonly Point[])[] {
  const left = [...shape];
  const found: (readonly Point[])[] = [];
  const turn = (a: Point, b: Point, c: Point) =>
    (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  for (let tries = 0; left.length > 3 && tries < 10_000; tries++) {
    const i = left.findIndex((b, k) => {
      const [a, c] = [left.at(k - 1) as Point, left[(k + 1) % left.length] as Point];
      if (turn(a, b, c) <= 1e-12) return false;
      return left.every(
        (p) => [a, b, c].includes(p) || turn(a, b, p) < 0 || turn(b, c, p) < 0 || turn(c, a, p) < 0,
      );
    });
    if (i < 0) break;
    found.push([left.at(i - 1) as Point, left[i] as Point, left[(i + 1) % left.length] as Point]);
    left.splice(i, 1);
  }
  return left.length === 3 ? [...found, left] : found;
}
