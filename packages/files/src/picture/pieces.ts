import type { Point } from '@tinwright/core';
import { convexPieces } from '@tinwright/core/internal';
import earcut from 'earcut';

/** A polygon less its holes in convex pieces; triangles where it has holes. */
export function pieces(
  shape: readonly Point[],
  holes: readonly (readonly Point[])[],
): readonly (readonly Point[])[] {
  if (holes.length === 0) return convexPieces(shape);
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
