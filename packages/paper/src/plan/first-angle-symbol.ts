import type { Point } from '@tinwright/core';
import type { Item } from '../page/page.js';

/** The sign of first-angle projection (ISO 5456-2): a cone cut short from the side, and from its small end to the right. */
export function firstAngleSymbol([x, y]: Point, size: number): readonly Item[] {
  const r = size / 2;
  const middle = y + r;
  const centre: Point = [x + 2 * size + r, middle];
  const line = (a: Point, b: Point): Item => ({ kind: 'stroke', pen: 'centre', points: [a, b] });
  return [
    {
      kind: 'stroke',
      pen: 'narrow',
      closed: true,
      points: [
        [x, middle - r / 2],
        [x + size, middle - r],
        [x + size, middle + r],
        [x, middle + r / 2],
      ],
    },
    { kind: 'ring', pen: 'narrow', centre, radius: r },
    { kind: 'ring', pen: 'narrow', centre, radius: r / 2 },
    line([x - 1, middle], [centre[0] + r + 1, middle]),
    line([centre[0], middle - r - 1], [centre[0], middle + r + 1]),
  ];
}
