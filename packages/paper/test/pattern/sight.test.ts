import { expect, test } from 'vitest';
import { buried } from '../../src/pattern/sight.js';

/** A plate 100 x 60 with a notch 20 wide and 30 deep in the middle of its lower edge. */
const notched = [
  [0, 0],
  [40, 0],
  [40, 30],
  [60, 30],
  [60, 0],
  [100, 0],
  [100, 60],
  [0, 60],
] as const;

test('an upright line through metal, and one through the notch', () => {
  expect(buried(notched, 0, 20)).toEqual([[0, 60]]);
  const [[from, to]] = buried(notched, 0, 50) as [readonly [number, number]];
  expect([from, to]).toEqual([30, 60]);
});

test('a line along an edge is free as far as the edge goes', () => {
  expect(buried(notched, 0, 40)).toEqual([[30, 60]]);
  expect(buried(notched, 0, 0)).toEqual([]);
  expect(buried(notched, 1, 60)).toEqual([]);
});

test('a level line is cut in two by the notch', () => {
  expect(buried(notched, 1, 10)).toEqual([
    [0, 40],
    [60, 100],
  ]);
});
