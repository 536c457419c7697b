// Vectors in space as tests reckon with them, apart from the ones under test.
import type { Vec3 } from '@tinwright/core';

export const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const size = (a: Vec3): number => Math.hypot(...a);
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Turned about x, y and z in turn, by so many steps of 15° each. */
export function turned(p: Vec3, [a, b, c]: readonly number[]): Vec3 {
  const spin = (steps = 0): readonly [number, number] => [
    Math.cos((steps * Math.PI) / 12),
    Math.sin((steps * Math.PI) / 12),
  ];
  let [x, y, z] = p;
  const [ca, sa] = spin(a);
  [y, z] = [y * ca - z * sa, y * sa + z * ca];
  const [cb, sb] = spin(b);
  [z, x] = [z * cb - x * sb, z * sb + x * cb];
  const [cc, sc] = spin(c);
  [x, y] = [x * cc - y * sc, x * sc + y * cc];
  return [x, y, z];
}
