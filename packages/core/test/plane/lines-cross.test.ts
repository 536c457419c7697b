import type { Point } from '@tinwright/core';
import { linesCross } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

test.each<[string, Point, Point, Point, Point, boolean]>([
  ['a cross', [0, 0], [2, 2], [0, 2], [2, 0], true],
  ['side by side', [0, 0], [2, 0], [0, 1], [2, 1], false],
  ['one after the other on a line', [0, 0], [1, 0], [2, 0], [3, 0], false],
  ['a tee that does not reach', [0, 0], [2, 0], [1, 2], [1, 0.1], false],
])('%s', (_, a, b, c, d, crosses) => {
  expect(linesCross(a, b, c, d)).toBe(crosses);
  expect(linesCross(c, d, a, b)).toBe(crosses);
});
