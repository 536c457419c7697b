import type { FormedPanel, Point } from '@tinwright/core';
import { place3 } from '@tinwright/core/internal';
import type { Surface } from '@tinwright/files/internal';

/** Off a face by this much, mm, a line or point is not hidden by it. */
export const OFF = 0.02;

/** Lines across both faces of a panel. */
export function hatching({ pose, shape }: FormedPanel, thickness: number, apart: number): Surface['lines'] {
  const sums = shape.map(([x, y]) => x + y);
  const pitch = apart * Math.SQRT2;
  const first = Math.ceil(Math.min(...sums) / pitch);
  const count = Math.floor(Math.max(...sums) / pitch) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, k) => (first + k) * pitch).flatMap((c) =>
    across(shape, c).flatMap(([p, q]) =>
      [-OFF, thickness + OFF].map((z) => ({
        from: place3(pose, [p[0], p[1], z]),
        to: place3(pose, [q[0], q[1], z]),
        kind: 'mark' as const,
      })),
    ),
  );
}

/** What of the line x + y = c lies inside a polygon. */
function across(shape: readonly Point[], c: number): readonly (readonly [Point, Point])[] {
  const met = shape
    .flatMap((p, i): readonly Point[] => {
      const q = shape[(i + 1) % shape.length] as Point;
      const [a, b] = [p[0] + p[1] - c, q[0] + q[1] - c];
      if (a > 0 === b > 0) return [];
      const t = a / (a - b);
      return [[p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t]];
    })
    .toSorted((a, b) => a[0] - b[0]);
  return Array.from({ length: Math.floor(met.length / 2) }, (_, i) => [
    met[2 * i] as Point,
    met[2 * i + 1] as Point,
  ]);
}
