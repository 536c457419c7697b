import type { Point } from '@tinwright/core';
import { circleLoop } from '@tinwright/core/internal';
import { expect, test } from 'vitest';
import { grown, simplified } from '../../src/no-fit/grow.js';
import { type NoFitRing, ringArea } from '../../src/no-fit/ring.js';
import { polygonAround, reversed } from '../../src/outline/around.js';

const box = (x0: number, y0: number, x1: number, y1: number): NoFitRing => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];

test('a rectangle grows by the distance on its sides and by no more than 4 % at its corners', () => {
  const { outer } = grown({ outer: box(0, 0, 100, 50), holes: [] }, 2.5);
  const xs = outer.map((p) => p[0]);
  expect(Math.min(...xs)).toBeCloseTo(-2.5, 2);
  expect(Math.max(...xs)).toBeCloseTo(102.5, 2);
  const exact = 5000 + 300 * 2.5 + Math.PI * 2.5 ** 2;
  expect(ringArea(outer)).toBeGreaterThan(exact);
  expect(ringArea(outer)).toBeLessThan(exact + 0.04 * Math.PI * 2.5 ** 2 + 1);
});

test('a slot closes when its cheeks meet; holes shrink, small ones close', () => {
  const slotted: NoFitRing = [
    [0, 0],
    [100, 0],
    [100, 50],
    [60, 50],
    [60, 10],
    [56, 10],
    [56, 50],
    [0, 50],
  ];
  const clockwise = (ring: NoFitRing) => ring.toReversed();
  const holes = [clockwise(box(10, 10, 40, 40)), clockwise(box(80, 10, 83, 13))];
  const one = grown({ outer: slotted, holes }, 1);
  expect(one.outer.length).toBeGreaterThan(16); // the slot is still there
  expect(one.holes.map((h) => Math.round(ringArea(h)))).toEqual([-784, -1]);
  const three = grown({ outer: slotted, holes }, 2.1);
  expect(ringArea(three.outer)).toBeGreaterThan(104 * 54);
  expect(three.holes.map((h) => Math.round(ringArea(h)))).toEqual([-666]);
});

test('a round hole in arcs keeps an inside that lies inside it', () => {
  const ring = polygonAround(reversed(circleLoop([60, 60], 42)), 0.05);
  const outer = polygonAround(circleLoop([60, 60], 60), 0.05);
  const { holes } = grown({ outer, holes: [ring] }, 2);
  expect(holes).toHaveLength(1);
  const far = (p: Point) => Math.hypot(p[0] - 60, p[1] - 60);
  expect(Math.max(...(holes[0] as NoFitRing).map(far))).toBeLessThan(40.001);
  expect(Math.min(...outer.map(far))).toBeGreaterThan(59.999);
});

test('corners left out never take material away', () => {
  const ring: NoFitRing = [
    [0, 0],
    [50, 0.02],
    [100, 0],
    [100, 50],
    [50, 49.96],
    [0, 50],
  ];
  const fewer = simplified(ring, 0.05);
  expect(fewer).toHaveLength(4);
  expect(ringArea(fewer)).toBeGreaterThan(ringArea(ring));
});
