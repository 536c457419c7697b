import type { Loop } from '@tinwright/core';
import { expect, test } from 'vitest';
import { crossesItself } from '../../src/plane/crosses-itself.js';

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
