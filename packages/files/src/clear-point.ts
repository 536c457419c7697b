import type { FlatPattern, Point } from '@tinwright/core';
import { contains, distanceToLoop } from '@tinwright/core/internal';

/**
 * A point on the panel that stays put, clear of its edges and of holes: the middle where that is, else the clearest of
 * a few. In the frame of the pattern, mm.
 */
export function clearPoint({ panels, holes }: FlatPattern): Point {
  const corners = panels[0]?.shape ?? [];
  const shape = corners.map((at) => ({ at, bulge: 0 }));
  const [x, y] = corners.reduce(
    ([u, v], p) => [u + p[0] / corners.length, v + p[1] / corners.length],
    [0, 0],
  );
  const clearance = (p: Point) =>
    contains(shape, p) && !holes.some((h) => contains(h, p))
      ? Math.min(...[shape, ...holes].map((loop) => distanceToLoop(p, loop)))
      : -1;
  if (holes.length === 0 && clearance([x, y]) > 1) return [x, y];
  const towards = corners.flatMap((p, i): readonly Point[] => {
    const q = corners[(i + 1) % corners.length] as Point;
    return [p, [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2]];
  });
  const others = [0.3, 0.5, 0.7, 0.9, 0.95, 0.98, 0.99].flatMap((t) =>
    towards.map((p): Point => [x + (p[0] - x) * t, y + (p[1] - y) * t]),
  );
  return others.reduce<Point>((best, p) => (clearance(p) > clearance(best) + SAME ? p : best), [x, y]);
}

const SAME = 1e-7; // mm; so that rounding does not choose between equals
