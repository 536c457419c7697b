import type { Loop, Point } from '@tinwright/core';
import { crossesItself } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const corner = (x: number, y: number, bulge = 0) => ({ at: [x, y] as const, bulge });

test.each<[string, Loop, boolean]>([
  ['a square', [corner(0, 0), corner(10, 0), corner(10, 10), corner(0, 10)], false],
  ['a bow tie', [corner(0, 0), corner(10, 10), corner(10, 0), corner(0, 10)], true],
  ['two arcs that share both their ends', [corner(0, 0, 1), corner(10, 0, 1)], false],
  [
    'an arc that goes through a straight side once',
    [corner(0, 0), corner(10, 0), corner(10, 10, 0.1), corner(5, -5)],
    true,
  ],
  [
    'a side that ends on another',
    [corner(0, 0), corner(10, 0), corner(10, 10), corner(5, 0), corner(0, 10)],
    true,
  ],
])('%s', (_, loop, crosses) => {
  expect(crossesItself(loop)).toBe(crosses);
});

const square: readonly Point[] = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];

// straight outlines, as the sections of press tools are
test.each<[string, readonly Point[], boolean]>([
  ['a square: no', square, false],
  ['turned the other way: no', square.toReversed(), false],
  [
    'a bow tie',
    [
      [0, 0],
      [10, 10],
      [10, 0],
      [0, 10],
    ],
    true,
  ],
  [
    'a corner on another side',
    [
      [0, 0],
      [10, 0],
      [10, 10],
      [5, 0],
      [0, 10],
    ],
    true,
  ],
  [
    'an L: no',
    [
      [0, 0],
      [10, 0],
      [10, 4],
      [4, 4],
      [4, 10],
      [0, 10],
    ],
    false,
  ],
  [
    'two sides on one line that do not meet: no',
    [
      [0, 0],
      [2, 0],
      [2, 4],
      [6, 4],
      [6, 0],
      [8, 0],
      [8, 9],
      [0, 9],
    ],
    false,
  ],
  [
    'a corner twice',
    [
      [0, 0],
      [10, 0],
      [5, 5],
      [10, 10],
      [0, 10],
      [5, 5],
    ],
    true,
  ],
])('%s', (_, outline, crosses) => {
  expect(crossesItself(outline.map((at) => ({ at, bulge: 0 })))).toBe(crosses);
});
