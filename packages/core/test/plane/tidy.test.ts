import type { Loop } from '@tinwright/core';
import { corner, loopArea, loopLength } from '@tinwright/core/internal';
import { expect, test } from 'vitest';
import { tidy } from '../../src/plane/loop.js';

const SQUARE: Loop = [corner(0, 0), corner(10, 0), corner(10, 10), corner(0, 10)];

test('a clean loop: stays as it is', () => {
  expect(tidy(SQUARE)).toEqual(SQUARE);
});

test('a vertex in the middle of a straight run: left out', () => {
  expect(tidy([corner(0, 0), corner(4, 0), ...SQUARE.slice(1)])).toEqual(SQUARE);
});

test('several vertices on one run and one on the closing run: all left out', () => {
  const loop = [corner(0, 0), corner(2, 0), corner(4, 0), corner(6, 0), ...SQUARE.slice(1), corner(0, 5)];
  expect(tidy(loop)).toEqual(SQUARE);
});

test('the first vertex on a straight run: left out too', () => {
  expect(tidy([corner(5, 0), ...SQUARE.slice(1), corner(0, 0)])).toEqual([...SQUARE.slice(1), corner(0, 0)]);
});

test('a vertex given two or three times: once', () => {
  const loop = [corner(0, 0), corner(0, 0), corner(10, 0), corner(10, 0), corner(10, 0), ...SQUARE.slice(2)];
  expect(tidy(loop)).toEqual(SQUARE);
});

test('the first vertex repeated at the end: once', () => {
  expect(tidy([...SQUARE, corner(0, 0)])).toEqual(SQUARE);
});

test('vertices a hundredth of the tolerance apart: one, 1 µm apart: two', () => {
  const with2 = (gap: number) => [corner(0, 0), corner(10, 0), corner(10, gap), ...SQUARE.slice(2)];
  expect(tidy(with2(1e-9))).toHaveLength(4);
  expect(tidy([corner(0, 0), corner(10, 0), corner(10.001, 0.001), ...SQUARE.slice(2)])).toHaveLength(5);
});

test('two vertices in one place, an arc leaving the second: the arc stays', () => {
  const loop: Loop = [corner(0, 0), corner(10, 0), { at: [10, 0], bulge: 1 }, ...SQUARE.slice(2)];
  const found = tidy(loop);
  expect(found).toHaveLength(4);
  // square and half a circle of radius 5
  expect(loopArea(found)).toBeCloseTo(100 + 12.5 * Math.PI, 9);
});

test('a vertex where a line runs on into an arc: stays', () => {
  const slot: Loop = [corner(0, -4), { at: [20, -4], bulge: 1 }, corner(20, 4), { at: [0, 4], bulge: 1 }];
  expect(tidy(slot)).toEqual(slot);
});

test('a half circle bitten out of a straight edge: both its ends stay', () => {
  const bitten: Loop = [corner(0, 0), { at: [3, 0], bulge: -1 }, corner(7, 0), ...SQUARE.slice(1)];
  expect(tidy(bitten)).toEqual(bitten);
});

test('a spike that runs back on itself: its tip stays, it is no straight run', () => {
  const spike = [corner(0, 0), corner(15, 0), corner(10, 0), ...SQUARE.slice(2)];
  expect(tidy(spike)).toEqual(spike);
});

test('a cut-up loop: area and length are those of the tidy one', () => {
  const cut = [corner(0, 0), corner(1, 0), corner(1, 0), corner(7, 0), ...SQUARE.slice(1), corner(0, 3)];
  expect(loopArea(tidy(cut))).toBeCloseTo(loopArea(cut), 12);
  expect(loopLength(tidy(cut))).toBeCloseTo(loopLength(cut), 12);
});
