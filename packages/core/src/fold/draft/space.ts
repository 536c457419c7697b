import { frozen } from '../../units/frozen.js';

/** A point or vector in space, mm. */
export type Vec3 = readonly [number, number, number];

/** Place of an axis in a vector. */
export const AXIS: { readonly x: 0; readonly y: 1; readonly z: 2 } = frozen({ x: 0, y: 1, z: 2 });

/** Sum of two vectors. */
export const add3 = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
/** First vector less the second. */
export const sub3 = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
/** Vector times a number. */
export const scale3 = (a: Vec3, k: number): Vec3 => [a[0] * k, a[1] * k, a[2] * k];
/** Scalar product. */
export const dot3 = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
/** Vector product, right-handed. */
export const cross3 = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
/** Length of a vector, mm. */
export const length3 = (a: Vec3): number => Math.sqrt(dot3(a, a));
/** Vector of length 1 in the same direction; not for the zero vector. */
export const unit3 = (a: Vec3): Vec3 => scale3(a, 1 / length3(a));

/** Where a panel stands: its frame's origin (on the unmarked face) and axes in space. */
export interface Pose {
  readonly origin: Vec3;
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
}

/** The pose that turns nothing and moves its origin to a point. A new one each time: lists that are frozen take longer to read. */
export const homePose = (origin: Vec3 = [0, 0, 0]): Pose => ({
  origin,
  x: [1, 0, 0],
  y: [0, 1, 0],
  z: [0, 0, 1],
});

/** Turn a vector of the panel's frame into space. */
export function turn3(pose: Pose, v: Vec3): Vec3 {
  const { x, y, z } = pose;
  return [
    x[0] * v[0] + y[0] * v[1] + z[0] * v[2],
    x[1] * v[0] + y[1] * v[1] + z[1] * v[2],
    x[2] * v[0] + y[2] * v[1] + z[2] * v[2],
  ];
}

/** Bring a point of the panel's frame into space. */
export function place3(pose: Pose, p: Vec3): Vec3 {
  const { origin, x, y, z } = pose;
  return [
    origin[0] + (x[0] * p[0] + y[0] * p[1] + z[0] * p[2]),
    origin[1] + (x[1] * p[0] + y[1] * p[1] + z[1] * p[2]),
    origin[2] + (x[2] * p[0] + y[2] * p[1] + z[2] * p[2]),
  ];
}

/** First `inner`, then `outer`. */
export function compose3(outer: Pose, inner: Pose): Pose {
  return {
    origin: place3(outer, inner.origin),
    x: turn3(outer, inner.x),
    y: turn3(outer, inner.y),
    z: turn3(outer, inner.z),
  };
}
