import type { Vec3 } from '@tinwright/core';

/** A rigid move: p ↦ m·p + t, rows of m. */
export interface Rigid {
  readonly m: readonly [Vec3, Vec3, Vec3];
  readonly t: Vec3;
}

const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const apply = ({ m, t }: Rigid, p: Vec3): Vec3 => [
  dot(m[0], p) + t[0],
  dot(m[1], p) + t[1],
  dot(m[2], p) + t[2],
];

/** First `b`, then `a`. */
export function after(a: Rigid, b: Rigid): Rigid {
  const column = (k: 0 | 1 | 2): Vec3 => [b.m[0][k], b.m[1][k], b.m[2][k]];
  const row = (r: Vec3): Vec3 => [dot(r, column(0)), dot(r, column(1)), dot(r, column(2))];
  return { m: [row(a.m[0]), row(a.m[1]), row(a.m[2])], t: apply(a, b.t) };
}

export const STILL: Rigid = {
  m: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  t: [0, 0, 0],
};

/** Turn about the line through a point, by Rodrigues. */
export function spin([ux, uy, uz]: Vec3, at: Vec3, angle: number): Rigid {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const v = 1 - c;
  const m: Rigid['m'] = [
    [c + ux * ux * v, ux * uy * v - uz * s, ux * uz * v + uy * s],
    [uy * ux * v + uz * s, c + uy * uy * v, uy * uz * v - ux * s],
    [uz * ux * v - uy * s, uz * uy * v + ux * s, c + uz * uz * v],
  ];
  const moved = apply({ m, t: [0, 0, 0] }, at);
  return { m, t: [at[0] - moved[0], at[1] - moved[1], at[2] - moved[2]] };
}
