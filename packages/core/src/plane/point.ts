/** A point or vector in the plane, mm. */
export type Point = readonly [number, number];

export const ORIGIN: Point = Object.freeze([0, 0] as const);

/** Two points nearer than this are the same, mm. Far under any tool, far over rounding of metre-sized parts. */
export const SAME = 1e-7;

export const add = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1]];
export const sub = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1]];
export const scale = (a: Point, k: number): Point => [a[0] * k, a[1] * k];
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1];
/** z of the cross product: positive when `b` lies to the left of `a`. */
export const cross = (a: Point, b: Point): number => a[0] * b[1] - a[1] * b[0];
/** Length of a vector. Sizes here never overflow a square, so no need for the slow `Math.hypot`. */
export const size = (a: Point): number => Math.sqrt(a[0] * a[0] + a[1] * a[1]);
export const distance = (a: Point, b: Point): number => size([a[0] - b[0], a[1] - b[1]]);
export const mix = (a: Point, b: Point, t: number): Point => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
];
export const same = (a: Point, b: Point): boolean => distance(a, b) < SAME;

/** Vector of length 1 in the direction of `a`. */
export function unit(a: Point): Point {
  const l = size(a);
  return [a[0] / l, a[1] / l];
}

/** Right-hand normal of the direction `a`: outward of a counter-clockwise outline. */
export const outward = (a: Point): Point => [a[1], -a[0]];
