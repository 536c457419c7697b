import type { Loop } from '@tinwright/core';
import { corner, loopArea, loopLength } from '@tinwright/core/internal';
import { expect, test } from 'vitest';
import { withoutShort } from '../../src/plane/without-short.js';

const LEAST = 1e-3;

test('a loop without short edges is the same loop', () => {
  const square: Loop = [corner(0, 0), corner(10, 0), corner(10, 10), corner(0, 10)];
  expect(withoutShort(square, LEAST)).toBe(square);
});

test('a corner cut by half a thousandth is a corner again', () => {
  const cut: Loop = [corner(0, 0), corner(10, 0), corner(10, 9.9995), corner(9.9998, 10), corner(0, 10)];
  expect(withoutShort(cut, LEAST).map((v) => v.at)).toEqual([
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ]);
});

test('two short edges in a row become the corner where their steep neighbours meet', () => {
  const e = 0.0009;
  // neighbours go 5 for 2, the one up and the other along: neither short edge can go by itself
  const cut: Loop = [
    corner(8, -1),
    corner(10, 4),
    corner(10 + e, 4),
    corner(10 + e, 4 + e),
    corner(15 + e, 6 + e),
  ];
  const kept = withoutShort(cut, LEAST);
  expect(kept).toHaveLength(3);
  expect(kept[1]?.at[0]).toBeCloseTo(10 + e - (5 / 7) * e, 12);
  expect(kept[1]?.at[1]).toBeCloseTo(4 + (5 / 7) * e, 12);
});

test('before an arc the straight neighbour runs on to the circle, which stays where it is', () => {
  // a round bite at the upper right corner, its first edge 0.0005 long
  const bite: Loop = [
    corner(0, 0),
    corner(10, 0),
    corner(10, 7.9995),
    { at: [9.9995, 8], bulge: -Math.tan(Math.PI / 8) },
    corner(8, 9.9995),
    corner(0, 9.9995),
  ];
  const kept = withoutShort(bite, LEAST);
  expect(kept).toHaveLength(5);
  expect(kept[2]?.at[0]).toBeCloseTo(10, 9);
  expect(loopArea(kept)).toBeCloseTo(loopArea(bite), 3);
  expect(loopLength(kept)).toBeCloseTo(loopLength(bite), 2);
});

test('a short edge whose neighbours run side by side stays', () => {
  const step: Loop = [
    corner(0, 0),
    corner(10, 0),
    corner(10, 5),
    corner(5, 5),
    corner(5, 5.0005),
    corner(0, 5.0005),
  ];
  expect(withoutShort(step, LEAST)).toEqual(step);
});

test('an edge a little longer than that stays, even where its neighbours would meet nearer', () => {
  const cut: Loop = [corner(0, 0), corner(10, 0), corner(10, 9.9992), corner(9.9992, 10), corner(0, 10)];
  expect(withoutShort(cut, LEAST)).toBe(cut);
});
