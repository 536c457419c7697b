import type { Point, Vec3 } from '@tinwright/core';
import { convexPieces } from '@tinwright/core/internal';
import { join, type Surface } from '@tinwright/files/internal';

type Along = readonly [number, number];

/** A counter-clockwise section in x and z as a bar from y0 to y1. */
export function barSurface(section: readonly Point[], [y0, y1]: Along): Surface {
  const at = ([x, z]: Point, y: number): Vec3 => [x, y, z];
  const sides = section.map((p, i) => [p, section[(i + 1) % section.length] as Point] as const);
  const ends = convexPieces(section).flatMap((piece) => [
    { corners: piece.map((p) => at(p, y0)), normal: [0, -1, 0] as Vec3 },
    { corners: piece.toReversed().map((p) => at(p, y1)), normal: [0, 1, 0] as Vec3 },
  ]);
  const walls = sides.map(([p, q]) => ({
    corners: [at(p, y1), at(q, y1), at(q, y0), at(p, y0)],
    normal: [q[1] - p[1], 0, p[0] - q[0]] as Vec3,
  }));
  const lines = [
    ...sides.flatMap(([p, q]) =>
      [y0, y1].map((y) => ({ from: at(p, y), to: at(q, y), kind: 'edge' as const })),
    ),
    ...section.map((p) => ({ from: at(p, y0), to: at(p, y1), kind: 'edge' as const })),
  ];
  return join([{ facets: [...ends, ...walls], lines }]);
}
