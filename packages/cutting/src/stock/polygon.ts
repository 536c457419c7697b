import type { Point } from '@tinwright/core';

/** Signed area of a closed polygon, positive counter-clockwise, mm². */
export function ringArea(ring: readonly Point[]): number {
  return (
    ring.reduce((sum, [x, y], i) => {
      const [u, v] = ring[(i + 1) % ring.length] as Point;
      return sum + x * v - u * y;
    }, 0) / 2
  );
}

/** Lower left corner and size of what encloses points, mm. */
export function extentOf(points: readonly Point[]): {
  readonly min: Point;
  readonly size: readonly [number, number];
} {
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  const min: Point = [Math.min(...xs), Math.min(...ys)];
  return { min, size: [Math.max(...xs) - min[0], Math.max(...ys) - min[1]] };
}

/** Starts of two edges of a closed polygon that meet where they should not; null where none do. */
export function crossingEdges(ring: readonly Point[]): readonly [Point, Point] | null {
  const n = ring.length;
  const corner = (i: number) => ring[i % n] as Point;
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++) {
      const neighbours = j === i + 1 || (i === 0 && j === n - 1);
      const meet = neighbours
        ? foldsBack(ring, i, j)
        : meets(corner(i), corner(i + 1), corner(j), corner(j + 1));
      if (meet) return [corner(i), corner(j)];
    }
  return null;
}

/** Neighbouring edges that run back over each other, or have no length. */
function foldsBack(ring: readonly Point[], i: number, j: number): boolean {
  const n = ring.length;
  const first = j === i + 1 ? i : j;
  const [a, b, c] = [ring[first], ring[(first + 1) % n], ring[(first + 2) % n]] as [Point, Point, Point];
  const along = (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return length < 1e-9 || (Math.abs(side(a, b, c)) < 1e-9 && along <= 0);
}

function side(a: Point, b: Point, p: Point): number {
  return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
}

function meets(a: Point, b: Point, c: Point, d: Point): boolean {
  const [s, t, u, v] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (s * t < 0 && u * v < 0) return true;
  return on(a, b, c, s) || on(a, b, d, t) || on(c, d, a, u) || on(c, d, b, v);
}

function on(a: Point, b: Point, p: Point, off: number): boolean {
  if (Math.abs(off) > 1e-9) return false;
  const between = (k: 0 | 1) => p[k] >= Math.min(a[k], b[k]) - 1e-9 && p[k] <= Math.max(a[k], b[k]) + 1e-9;
  return between(0) && between(1);
}
