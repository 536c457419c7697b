import { type Loop, segments } from '@tinwright/core';
import {
  corner,
  flattened,
  keyholeLoop,
  loopArea,
  loopBox,
  loopLength,
  roundedRectangle,
  roundOf,
  segmentLength,
  slotLoop,
} from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const sizeOf = (loop: Loop) => {
  const { min, max } = loopBox(loop);
  return [min[0], min[1], max[0], max[1]];
};

test.each([
  [30, 20, 0],
  [30, 20, 4],
  [20, 30, 7],
  [30, 20, 10],
  [20, 20, 10],
  [30, 20, 9.9996],
])('a rectangle %d by %d with rounds of %d: its area, edge and box by hand', (length, width, radius) => {
  const loop = roundedRectangle(length, width, radius);
  expect(loopArea(loop)).toBeCloseTo(length * width - (4 - Math.PI) * radius ** 2, 1);
  expect(loopLength(loop)).toBeCloseTo(2 * (length + width) - (8 - 2 * Math.PI) * radius, 2);
  expect(sizeOf(loop)).toEqual(
    [-length / 2, -width / 2, length / 2, width / 2].map((v) => expect.closeTo(v, 9)),
  );
  expect(Math.min(...segments(loop).map(segmentLength))).toBeGreaterThan(1e-3);
  if (radius < 9) expect(loopArea(loop)).toBeCloseTo(length * width - (4 - Math.PI) * radius ** 2, 9);
});

test('sides: eight with rounds, six where two meet, four circles’ quarters where all do, four corners without', () => {
  const sides = (radius: number, length = 30) => roundedRectangle(length, 20, radius).length;
  expect([sides(4), sides(10), sides(10, 20), sides(0)]).toEqual([8, 6, 4, 4]);
  // less than a thousandth left between two rounds is none, a thousandth stays
  expect([sides(9.9996), sides(9.9994)]).toEqual([6, 8]);
});

test('a slot: two half circles and what is between them; a circle where it is as long as wide', () => {
  expect(loopArea(slotLoop(30, 8))).toBeCloseTo(22 * 8 + Math.PI * 16, 9);
  expect(loopLength(slotLoop(30, 8))).toBeCloseTo(44 + 8 * Math.PI, 9);
  expect(sizeOf(slotLoop(30, 8))).toEqual([-15, -4, 15, 4].map((v) => expect.closeTo(v, 12)));
  expect(roundOf(slotLoop(8, 8))).toMatchObject({ centre: [0, 0], radius: 4 });
  expect(roundOf(slotLoop(8.5, 8))).toBeNull();
});

test('a keyhole: the round, and the slot that leaves it', () => {
  const [R, r, y] = [6, 2, 15];
  const within = Math.asin(r / R); // half the turn of the round that the slot takes
  const lens = R * R * (within - Math.sin(within) * Math.cos(within)); // of the round, past the slot's foot
  const foot = Math.sqrt(R * R - r * r);
  const loop = keyholeLoop(2 * R, y, 2 * r);
  expect(loopArea(loop)).toBeCloseTo(Math.PI * R * R - lens + 2 * r * (y - foot) + (Math.PI * r * r) / 2, 9);
  expect(sizeOf(loop)).toEqual([-R, -R, R, y + r].map((v) => expect.closeTo(v, 9)));
});

test('a loop of two arcs that are no half circles is no round one', () => {
  for (const [a, b] of [
    [1, 0.9],
    [0.9, 1],
    [1, -1],
  ] as const)
    expect(
      roundOf([
        { at: [0, 0], bulge: a },
        { at: [10, 0], bulge: b },
      ]),
    ).toBeNull();
  expect(roundOf([corner(0, 0), corner(10, 0), corner(10, 10)])).toBeNull();
});

test('flattened: every point on the loop, no chord further from its arc than allowed, and not many more than needed', () => {
  for (const sagitta of [0.5, 0.05, 0.001]) {
    const points = flattened(slotLoop(30, 8), sagitta);
    const half = points.slice(1, -1).length / 2;
    const needed = Math.PI / (2 * Math.acos(1 - sagitta / 4));
    expect(half).toBeGreaterThanOrEqual(needed - 1);
    expect(half).toBeLessThan(needed + 1.5);
    for (const [x, y] of points) expect(Math.hypot(Math.max(0, Math.abs(x) - 11), y)).toBeCloseTo(4, 9);
    const area = points.reduce((sum, [x, y], i) => {
      const [u, v] = points[(i + 1) % points.length] as readonly [number, number];
      return sum + (x * v - u * y) / 2;
    }, 0);
    expect(loopArea(slotLoop(30, 8)) - area).toBeGreaterThan(0);
    expect(loopArea(slotLoop(30, 8)) - area).toBeLessThan(8 * Math.PI * sagitta);
  }
});
