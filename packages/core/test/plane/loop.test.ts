import { type Loop, segments, type Vertex } from '@tinwright/core';
import { arcOf, circleLoop, corner, loopArea, loopBox, loopLength } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const rectangle = (x: number, y: number): Loop => [corner(0, 0), corner(x, 0), corner(x, y), corner(0, y)];
const backwards = (loop: Loop): Loop =>
  segments(loop)
    .map((s) => ({ at: s.to, bulge: -s.bulge }))
    .toReversed();

const QUARTER = Math.tan(Math.PI / 8); // bulge is tan(sweep / 4)

/** x by y with four corner arcs of radius r, counter-clockwise. */
const rounded = (x: number, y: number, r: number): Loop => [
  corner(r, 0),
  { at: [x - r, 0], bulge: QUARTER },
  corner(x, r),
  { at: [x, y - r], bulge: QUARTER },
  corner(x - r, y),
  { at: [r, y], bulge: QUARTER },
  corner(0, y - r),
  { at: [0, r], bulge: QUARTER },
];

/** Slot of width 2r and straight length l along x. */
const slot = (l: number, r: number): Loop => [
  corner(0, -r),
  { at: [l, -r], bulge: 1 },
  corner(l, r),
  { at: [0, r], bulge: 1 },
];

test('a rectangle 40 by 30: area 1200, length 140, box as drawn', () => {
  const loop = rectangle(40, 30);
  expect(loopArea(loop)).toBe(1200);
  expect(loopLength(loop)).toBe(140);
  expect(loopBox(loop)).toEqual({ min: [0, 0], max: [40, 30] });
});

test('a circle of radius 5: area 25π, length 10π, box 10 by 10 about the centre', () => {
  const loop = circleLoop([3, -2], 5);
  expect(loopArea(loop)).toBeCloseTo(25 * Math.PI, 10);
  expect(loopLength(loop)).toBeCloseTo(10 * Math.PI, 10);
  const { min, max } = loopBox(loop);
  expect([...min, ...max].map((v) => Math.round(v * 1e9) / 1e9)).toEqual([-2, -7, 8, 3]);
});

test('a slot of straight length 20 and radius 4: area l·2r + πr², length 2l + 2πr', () => {
  const loop = slot(20, 4);
  expect(loopArea(loop)).toBeCloseTo(20 * 8 + 16 * Math.PI, 10);
  expect(loopLength(loop)).toBeCloseTo(40 + 8 * Math.PI, 10);
  expect(loopBox(loop).min[0]).toBeCloseTo(-4, 12);
  expect(loopBox(loop).max[0]).toBeCloseTo(24, 12);
});

test('a rectangle with rounded corners: area xy - (4 - π)r², length 2x + 2y - (8 - 2π)r, same box', () => {
  const loop = rounded(60, 25, 6);
  expect(loopArea(loop)).toBeCloseTo(60 * 25 - (4 - Math.PI) * 36, 9);
  expect(loopLength(loop)).toBeCloseTo(170 - (8 - 2 * Math.PI) * 6, 10);
  const { min, max } = loopBox(loop);
  expect([...min, ...max].map((v) => Math.round(v * 1e9) / 1e9)).toEqual([0, 0, 60, 25]);
});

test('a bite of a half circle out of an edge: its area is taken away and the box stays', () => {
  // half circle of radius 5 into the south edge of 40 by 30, walked clockwise
  const loop: Loop = [corner(0, 0), { at: [15, 0], bulge: -1 }, ...rectangle(40, 30).slice(1)];
  const bitten: Loop = [loop[0], loop[1], corner(25, 0), ...loop.slice(2)] as Loop;
  expect(loopArea(bitten)).toBeCloseTo(1200 - 12.5 * Math.PI, 9);
  expect(loopLength(bitten)).toBeCloseTo(140 - 10 + 5 * Math.PI, 10);
  expect(loopBox(bitten)).toEqual({ min: [0, 0], max: [40, 30] });
});

test('an arc of three quarters of a circle closed by its chord: area r²(3π/4 + 1/2)', () => {
  const loop: Loop = [{ at: [2, 0], bulge: Math.tan((3 * Math.PI) / 8) }, corner(0, -2)];
  expect(loopArea(loop)).toBeCloseTo(4 * ((3 * Math.PI) / 4 + 0.5), 10);
  expect(loopLength(loop)).toBeCloseTo(3 * Math.PI + Math.sqrt(8), 10);
  expect(loopBox(loop).max[1]).toBeCloseTo(2, 12);
  expect(loopBox(loop).min[0]).toBeCloseTo(-2, 12);
});

test('an arc that passes no compass point: the box ends at its ends', () => {
  // 30° to 60° of the unit circle, closed through the centre
  const at = (a: number) => [Math.cos((a * Math.PI) / 180), Math.sin((a * Math.PI) / 180)] as const;
  const loop: Loop = [corner(0, 0), { at: at(30), bulge: Math.tan(Math.PI / 24) }, corner(...at(60))];
  const { min, max } = loopBox(loop);
  expect(min).toEqual([0, 0]);
  expect(max[0]).toBeCloseTo(Math.sqrt(3) / 2, 12);
  expect(max[1]).toBeCloseTo(Math.sqrt(3) / 2, 12);
  expect(loopArea(loop)).toBeCloseTo(Math.PI / 12, 12);
});

test('any loop walked backwards: area changes its sign, length and box stay', () => {
  for (const loop of [rectangle(7, 5), slot(20, 4), rounded(60, 25, 6), circleLoop([1, 1], 2)]) {
    const back = backwards(loop);
    expect(loopArea(loop)).toBeGreaterThan(0);
    expect(loopArea(back)).toBeCloseTo(-loopArea(loop), 9);
    expect(loopLength(back)).toBeCloseTo(loopLength(loop), 9);
    expect(loopBox(back).max[0]).toBeCloseTo(loopBox(loop).max[0], 9);
    expect(loopBox(back).min[1]).toBeCloseTo(loopBox(loop).min[1], 9);
  }
});

test('the last vertex joins the first', () => {
  expect(segments([corner(0, 0), { at: [1, 0], bulge: 0.5 }])).toEqual([
    { from: [0, 0], to: [1, 0], bulge: 0 },
    { from: [1, 0], to: [0, 0], bulge: 0.5 },
  ]);
});

test('a quarter circle from east to north: centre, radius, start and sweep as drawn', () => {
  const { centre, radius, start, sweep } = arcOf({ from: [13, 5], to: [10, 8], bulge: QUARTER });
  expect(centre[0]).toBeCloseTo(10, 12);
  expect(centre[1]).toBeCloseTo(5, 12);
  expect(radius).toBeCloseTo(3, 12);
  expect(start).toBeCloseTo(0, 12);
  expect(sweep).toBeCloseTo(Math.PI / 2, 12);
});

test('a loop moved and turned a quarter: area and length stay', () => {
  const loop = rounded(60, 25, 6);
  const moved = loop.map(({ at: [x, y], bulge }): Vertex => ({ at: [100 - y, 50 + x], bulge }));
  expect(loopArea(moved)).toBeCloseTo(loopArea(loop), 8);
  expect(loopLength(moved)).toBeCloseTo(loopLength(loop), 9);
  expect(loopBox(moved).min[0]).toBeCloseTo(75, 9);
  expect(loopBox(moved).max[1]).toBeCloseTo(110, 9);
});
