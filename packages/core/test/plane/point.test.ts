import { distance } from '@tinwright/core/internal';
import { expect, test } from 'vitest';
import { add, cross, dot, mix, outward, SAME, same, scale, sub, unit } from '../../src/plane/point.js';

test('two vectors: sum, difference and multiple go by coordinate', () => {
  expect(add([1, 2], [3, -5])).toEqual([4, -3]);
  expect(sub([1, 2], [3, -5])).toEqual([-2, 7]);
  expect(scale([1, -2], 3)).toEqual([3, -6]);
});

test('two vectors: dot 3·(-4) + 4·3 = 0, cross 3·3 + 4·4 = 25', () => {
  expect(dot([3, 4], [-4, 3])).toBe(0);
  expect(cross([3, 4], [-4, 3])).toBe(25);
});

test('a vector to the left of another: positive cross product', () => {
  expect(cross([1, 0], [0, 1])).toBeGreaterThan(0);
  expect(cross([1, 0], [0, -1])).toBeLessThan(0);
});

test('the 3-4-5 triangle: distance 5, unit vector 0.6 0.8', () => {
  expect(distance([1, 1], [4, 5])).toBe(5);
  expect(unit([3, 4])).toEqual([0.6, 0.8]);
});

test('a quarter of the way from one point to another', () => {
  expect(mix([0, 8], [4, 0], 0.25)).toEqual([1, 6]);
});

test('the south edge of a counter-clockwise outline: outward is south', () => {
  const [x, y] = outward([1, 0]);
  expect(x).toBe(0);
  expect(y).toBe(-1);
});

test('points nearer than the tolerance are the same, others are not', () => {
  expect(same([0, 0], [SAME / 2, 0])).toBe(true);
  expect(same([0, 0], [SAME * 2, 0])).toBe(false);
});
