import type { Point } from '@tinwright/core';

/** A closed polygon, material to the left of every side: counter-clockwise outside, clockwise round a hole. mm. */
export type NoFitRing = readonly Point[];

/** Polygons that are placed as one: an outside and the holes in it. */
export interface Region {
  readonly outer: NoFitRing;
  readonly holes: readonly NoFitRing[];
}

/** Steps of coordinates, mm. A power of two, so that sums and products of coordinates are exact. */
export const STEP: number = 1 / 1024;

const snapped = (v: number) => Math.round(v / STEP) * STEP + 0;

/** The ring on the grid of steps, without sides of no length and corners in the middle of a straight run. */
export function onGrid(ring: NoFitRing): NoFitRing {
  let kept = ring.map(([x, y]): Point => [snapped(x), snapped(y)]);
  for (;;) {
    const idle = kept.findIndex((p, i) => {
      const [a, b] = [
        kept[(i + kept.length - 1) % kept.length] as Point,
        kept[(i + 1) % kept.length] as Point,
      ];
      return (p[0] - a[0]) * (b[1] - p[1]) === (p[1] - a[1]) * (b[0] - p[0]);
    });
    if (idle < 0) return kept;
    kept = kept.filter((_, i) => i !== idle);
  }
}

/** The ring turned round the origin, degrees counter-clockwise; quarter turns are exact. */
export function turned(ring: NoFitRing, degrees: number): NoFitRing {
  const [c, s] = direction(degrees);
  return ring.map(([x, y]): Point => [c * x - s * y + 0, s * x + c * y + 0]);
}

/** Cosine and sine of an angle in degrees, exact for quarter turns. */
export function direction(degrees: number): readonly [number, number] {
  const quarter = degrees / 90;
  if (!Number.isInteger(quarter)) {
    const angle = (degrees * Math.PI) / 180;
    return [Math.cos(angle), Math.sin(angle)];
  }
  const turns: readonly (readonly [number, number])[] = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ];
  return turns[((quarter % 4) + 4) % 4] as readonly [number, number];
}

/** The ring reflected through the origin; its material stays to the left. */
export const reflected = (ring: NoFitRing): NoFitRing => ring.map(([x, y]): Point => [-x + 0, -y + 0]);

/** Signed area, mm²: negative for a hole. */
export function ringArea(ring: NoFitRing): number {
  return ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length] as Point;
    return sum + (x * v - u * y) / 2;
  }, 0);
}
