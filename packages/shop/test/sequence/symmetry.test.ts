// Ways to lay a part on itself: what the search may take for one.

import { expect, test } from 'vitest';
import { foldTree } from '../../src/sequence/part/fold-tree.js';
import { workOf } from '../../src/sequence/part/operations.js';
import { symmetriesOf } from '../../src/sequence/part/symmetry.js';
import { planned } from '../shops.js';

/** Whether it is turned over, and the steps that each step is laid on, for every way there is. */
const ways = (part: object) =>
  symmetriesOf(workOf(foldTree(planned(part).part, { angle: 135, setBack: null }))).map(({ over, steps }) => [
    over,
    ...steps,
  ]);
const strip = (legs: readonly number[], angles: readonly number[]) => ({
  family: 'bent-strip',
  width: 60,
  legs,
  angles,
});
const box = (length: number, width: number, more: object = {}) => ({
  family: 'open-box',
  length,
  width,
  height: 40,
  ...more,
});

test('a channel is turned round, a zigzag turned over, end for end', () => {
  expect(ways(strip([30, 60, 30], [90, 90]))).toEqual([[false, 1, 0]]);
  expect(ways(strip([30, 60, 30], [45, -45]))).toEqual([[true, 1, 0]]);
});

test('unequal legs, angles or radii leave none', () => {
  expect(ways(strip([30, 60, 31], [90, 90]))).toEqual([]);
  expect(ways(strip([30, 60, 30], [90, 89]))).toEqual([]);
  expect(ways(strip([30, 60, 40, 30], [90, 90, 90]))).toEqual([]);
});

test('a box has one, a square box three, every bend once on every wall', () => {
  const four = ways(box(200, 200));
  expect(ways(box(240, 180))).toHaveLength(1);
  expect(four).toHaveLength(3);
  for (const [, ...steps] of [...four, ...ways(box(240, 180))])
    expect(steps.toSorted((a, b) => Number(a) - Number(b))).toEqual(steps.map((_, i) => i));
});

test('hems are laid on hems: folded on folded, closed on closed', () => {
  const part = box(240, 180, { hem: { type: 'closed', length: 8 } });
  const { steps } = workOf(foldTree(planned(part).part, { angle: 135, setBack: null }));
  const [way] = ways(part);
  way?.slice(1).forEach((on, s) => {
    expect(steps[Number(on)]?.action).toBe(steps[s]?.action);
  });
  expect(way).toHaveLength(13);
});
