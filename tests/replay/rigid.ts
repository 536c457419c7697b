// Moves of space as twelve numbers, rows of [turn | shift]; nothing of the library's own.

export type V2 = readonly [number, number];
export type V3 = readonly [number, number, number];
/** p ↦ turn · p + shift */
export type Move = readonly number[];

export const STAY: Move = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0];

export const at = (m: Move, [x, y, z]: V3): V3 => [
  (m[0] as number) * x + (m[1] as number) * y + (m[2] as number) * z + (m[3] as number),
  (m[4] as number) * x + (m[5] as number) * y + (m[6] as number) * z + (m[7] as number),
  (m[8] as number) * x + (m[9] as number) * y + (m[10] as number) * z + (m[11] as number),
];

/** The move without its shift. */
export const along = (m: Move, [x, y, z]: V3): V3 => [
  (m[0] as number) * x + (m[1] as number) * y + (m[2] as number) * z,
  (m[4] as number) * x + (m[5] as number) * y + (m[6] as number) * z,
  (m[8] as number) * x + (m[9] as number) * y + (m[10] as number) * z,
];

/** The last one first. */
export const chain = (...moves: readonly Move[]): Move =>
  moves.reduce((a, b) => {
    const columns = [0, 1, 2].map((k) => along(a, [b[k] as number, b[k + 4] as number, b[k + 8] as number]));
    const shift = at(a, [b[3] as number, b[7] as number, b[11] as number]);
    return [0, 1, 2].flatMap((row) => [...columns.map((c) => c[row] as number), shift[row] as number]);
  });

export const shift = (x: number, y: number, z: number): Move => [1, 0, 0, x, 0, 1, 0, y, 0, 0, 1, z];

/** Turn about a line through the origin along a unit vector of the plane z = 0. */
export function spin([ux, uy]: V2, radian: number): Move {
  const [c, s] = [Math.cos(radian), Math.sin(radian)];
  const v = 1 - c;
  return [
    c + ux * ux * v,
    ux * uy * v,
    uy * s,
    0,
    ux * uy * v,
    c + uy * uy * v,
    -ux * s,
    0,
    -uy * s,
    ux * s,
    c,
    0,
  ];
}

/** Turn in the section of a machine: from x (forward) towards z (up). */
export const raise = (radian: number): Move => spin([0, 1], -radian);

export const dot = (a: V3, b: V3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export const cross = (a: V3, b: V3): V3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
