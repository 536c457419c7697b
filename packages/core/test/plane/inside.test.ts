import type { Point } from '@tinwright/core';
import { type Loop, segments } from '@tinwright/core';
import {
  circleLoop,
  contains,
  corner,
  distanceToLoop,
  distanceToSegment,
  loopLength,
} from '@tinwright/core/internal';
import { type PathD, PointInPolygonResult, pointInPolygonD } from 'clipper2-ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const SQUARE: Loop = [corner(0, 0), corner(10, 0), corner(10, 10), corner(0, 10)];
/** The square with a half circle of radius 2 bitten out of its south edge and one of radius 5 put on its north. */
const BITTEN: Loop = [
  corner(0, 0),
  { at: [3, 0], bulge: -1 },
  corner(7, 0),
  corner(10, 0),
  { at: [10, 10], bulge: 1 },
  corner(0, 10),
];
const QUARTER = { from: [5, 0], to: [0, 5], bulge: Math.tan(Math.PI / 8) } as const;

test.each([
  [[5, 5], true],
  [[0.001, 9.999], true],
  [[-0.001, 5], false],
  [[5, 10.001], false],
  [[20, 5], false],
  [[-20, 0], false],
] as const)('the point %j against a square of 10: inside is %s', (p, inside) => {
  expect(contains(SQUARE, p)).toBe(inside);
});

test.each([
  ['in the bite', [5, 1.9], false],
  ['just over the bite', [5, 2.1], true],
  ['beside the bite', [2.9, 0.2], true],
  ['in the half circle on top', [5, 14.9], true],
  ['over the half circle', [5, 15.1], false],
  ['beside the half circle', [9.5, 13], false],
] as const)('a point %s: %j, inside is %s', (_case, p, inside) => {
  expect(contains(BITTEN, p)).toBe(inside);
});

test('a hole seen as a clockwise circle: the same points are within', () => {
  const back = circleLoop([0, 0], 3).map((v) => ({ at: v.at, bulge: -v.bulge }));
  expect(contains(back, [0.5, 0.5])).toBe(true);
  expect(contains(back, [2.5, 2.5])).toBe(false);
});

test('a point on the diameter that the two arcs of a circle share, its centre too: inside', () => {
  for (let degrees = 0; degrees < 360; degrees += 15) {
    const [x, y] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const circle: Loop = [
      { at: [20 + 10 * x, 30 + 10 * y], bulge: 1 },
      { at: [20 - 10 * x, 30 - 10 * y], bulge: 1 },
    ];
    for (const r of [-9.5, -4, 0, 4, 9.5]) expect(contains(circle, [20 + r * x, 30 + r * y])).toBe(true);
    for (const r of [-10.5, 10.5, 30]) expect(contains(circle, [20 + r * x, 30 + r * y])).toBe(false);
  }
});

test('a point level with corners of the loop: judged as any other', () => {
  const diamond: Loop = [corner(0, 0), corner(5, -5), corner(10, 0), corner(5, 5)];
  expect(contains(diamond, [5, 0])).toBe(true);
  expect(contains(diamond, [-3, 0])).toBe(false);
  expect(contains(diamond, [13, 0])).toBe(false);
  expect(contains(diamond, [-3, 5])).toBe(false);
});

test.each([
  ['beyond the start of a line', [-3, 4], 5],
  ['beyond its end', [13, 4], 5],
  ['over it', [6, -2.5], 2.5],
  ['on it', [6, 0], 0],
] as const)('a point %s from (0,0) to (10,0): %j is %d mm off', (_case, p, far) => {
  expect(distanceToSegment(p, { from: [0, 0], to: [10, 0], bulge: 0 })).toBeCloseTo(far, 12);
});

test('a line without length: the distance to its one point', () => {
  expect(distanceToSegment([3, 4], { from: [0, 0], to: [0, 0], bulge: 0 })).toBe(5);
});

test.each([
  ['at the centre', [0, 0], 5],
  ['inside, under the arc', [1, 1], 5 - Math.SQRT2],
  ['outside, over the arc', [6, 8], 5],
  ['across the centre', [-3, -4], Math.hypot(8, 4)],
  ['past the start', [5, -2], 2],
  ['past the end', [-2, 5], 2],
  ['on the arc', [3, 4], 0],
  ['at its start', [5, 0], 0],
] as const)('a point %s of a quarter circle of radius 5: %j is %d mm off', (_case, p, far) => {
  expect(distanceToSegment(p, QUARTER)).toBeCloseTo(far, 9);
  const back = { from: QUARTER.to, to: QUARTER.from, bulge: -QUARTER.bulge };
  expect(distanceToSegment(p, back)).toBeCloseTo(far, 9);
});

test('a loop: the distance to its nearest edge, from inside and outside', () => {
  expect(distanceToLoop([4, 8], SQUARE)).toBe(2);
  expect(distanceToLoop([13, 14], SQUARE)).toBe(5);
  expect(distanceToLoop([5, 3], BITTEN)).toBeCloseTo(1, 12);
  expect(distanceToLoop([5, 14], BITTEN)).toBeCloseTo(1, 12);
});

// Against an independent flattening: the arc is halved through its middle point again and again.
function halved(from: Point, to: Point, bulge: number, times: number): readonly Point[] {
  if (times === 0 || bulge === 0) return [from];
  const middle: Point = [
    (from[0] + to[0] + bulge * (to[1] - from[1])) / 2,
    (from[1] + to[1] - bulge * (to[0] - from[0])) / 2,
  ];
  const half = Math.tan(Math.atan(bulge) / 2);
  return [...halved(from, middle, half, times - 1), ...halved(middle, to, half, times - 1)];
}

const flat = (loop: Loop) => segments(loop).flatMap((s) => halved(s.from, s.to, s.bulge, 8));

/** Distance to a polyline through the height of the triangle over each bit (Heron). */
function distanceToBits(p: Point, points: readonly Point[]): number {
  const far = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);
  return Math.min(
    ...points.map((a, i) => {
      const b = points[(i + 1) % points.length] as Point;
      const [l, pa, pb] = [far(a, b), far(p, a), far(p, b)];
      if (pa ** 2 > l ** 2 + pb ** 2 || pb ** 2 > l ** 2 + pa ** 2 || l === 0) return Math.min(pa, pb);
      const s = (l + pa + pb) / 2;
      return (2 * Math.sqrt(Math.max(0, s * (s - l) * (s - pa) * (s - pb)))) / l;
    }),
  );
}

const onGrid = fc.integer({ min: -500, max: 500 }).map((v) => v / 10);
const offGrid = fc.integer({ min: -700, max: 700 }).map((v) => v / 10 + 0.0371);
const bulge = fc.oneof(
  fc.constant(0),
  fc.double({ min: 0.01, max: 2.5, noNaN: true }),
  fc.double({ min: -2.5, max: -0.01, noNaN: true }),
);
const vertex = fc.record({ at: fc.tuple(onGrid, onGrid), bulge });
const loop = fc.uniqueArray(vertex, { minLength: 3, maxLength: 7, selector: (v) => v.at.join() });

test('any loop of lines and arcs: the distance is that to the finely flattened loop', () => {
  fc.assert(
    fc.property(loop, fc.tuple(offGrid, offGrid), (any, p) => {
      const slack = loopLength(any) * 1e-4;
      expect(Math.abs(distanceToLoop(p, any) - distanceToBits(p, flat(any)))).toBeLessThan(slack);
    }),
  );
});

test('any loop of lines and arcs: a point off the line lies inside where clipper2-ts says so', () => {
  fc.assert(
    fc.property(loop, fc.tuple(offGrid, offGrid), (any, p) => {
      fc.pre(distanceToLoop(p, any) > loopLength(any) * 1e-4);
      const path: PathD = flat(any).map(([x, y]) => ({ x, y }));
      const theirs = pointInPolygonD({ x: p[0], y: p[1] }, path, 6) === PointInPolygonResult.IsInside;
      expect(contains(any, p)).toBe(theirs);
    }),
  );
});
