import type { Point } from '@tinwright/core';
import type { Item } from '../page/page.js';

/** Where views stand: the top view below the front view and the left one to its right, or above it and to its left. */
export type Projection = 'first' | 'third';

/**
 * The sign of a projection (ISO 5456-2): a cone cut short from the side, and from its small end, to its right in first
 * angle, to its left in third.
 */
export function projectionSymbol(projection: Projection, [x, y]: Point, size: number): readonly Item[] {
  const r = size / 2;
  const middle = y + r;
  const third = projection === 'third';
  const cone = third ? x + 2 * size : x;
  const centre: Point = [third ? x + r : x + 2 * size + r, middle];
  const line = (a: Point, b: Point): Item => ({ kind: 'stroke', pen: 'centre', points: [a, b] });
  return [
    {
      kind: 'stroke',
      pen: 'narrow',
      closed: true,
      points: [
        [cone, middle - r / 2],
        [cone + size, middle - r],
        [cone + size, middle + r],
        [cone, middle + r / 2],
      ],
    },
    { kind: 'ring', pen: 'narrow', centre, radius: r },
    { kind: 'ring', pen: 'narrow', centre, radius: r / 2 },
    line([x - 1, middle], [x + 3 * size + 1, middle]),
    line([centre[0], middle - r - 1], [centre[0], middle + r + 1]),
  ];
}
