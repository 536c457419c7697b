// Distances and facing edges on the flat, against dense samples of the same lines and arcs and against known shapes.

import type { Loop, Point, Segment } from '@tinwright/core';
import { arcOf, closest, nearestOn } from '@tinwright/core/internal';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { facing } from '../../src/checks/geometry/facing.js';

const coordinate = fc.integer({ min: -400, max: 400 }).map((n) => n / 10);
const point: fc.Arbitrary<Point> = fc.tuple(coordinate, coordinate);
const segment: fc.Arbitrary<Segment> = fc
  .record({ from: point, to: point, bulge: fc.constantFrom(0, 0, 0.3, -0.7, 1, -1.8) })
  .filter(({ from, to }) => Math.hypot(to[0] - from[0], to[1] - from[1]) > 1);

/** Points along a line or arc, both ends included. */
function samples(s: Segment, count: number): readonly Point[] {
  return Array.from({ length: count + 1 }, (_, i): Point => {
    const t = i / count;
    if (s.bulge === 0) return [s.from[0] + (s.to[0] - s.from[0]) * t, s.from[1] + (s.to[1] - s.from[1]) * t];
    const { centre, radius, start, sweep } = arcOf(s);
    return [
      centre[0] + radius * Math.cos(start + sweep * t),
      centre[1] + radius * Math.sin(start + sweep * t),
    ];
  });
}

const apart = (p: Point, q: Point) => Math.hypot(p[0] - q[0], p[1] - q[1]);

test('the nearest point of a line or arc is on it, and none of its points is nearer', () => {
  fc.assert(
    fc.property(segment, point, (s, p) => {
      const near = nearestOn(s, p);
      const own = apart(near, p);
      const dense = samples(s, 400);
      const best = Math.min(...dense.map((q) => apart(q, p)));
      expect(own).toBeLessThanOrEqual(best + 1e-9);
      expect(Math.min(...dense.map((q) => apart(q, near)))).toBeLessThan(0.5);
      expect(own).toBeGreaterThan(best - 0.5);
    }),
  );
});

test('the shortest way between two that do not cross is no longer than any sampled one, and ends on both', () => {
  let apartPairs = 0;
  fc.assert(
    fc.property(segment, segment, (a, b) => {
      const [as, bs] = [samples(a, 150), samples(b, 150)];
      const best = Math.min(...as.map((p) => Math.min(...bs.map((q) => apart(p, q)))));
      if (best < 2) return; // may cross
      apartPairs += 1;
      const way = closest(a, b);
      expect(way.distance).toBeLessThanOrEqual(best + 1e-9);
      expect(way.distance).toBeGreaterThan(best - 0.2);
      expect(apart(way.from, nearestOn(a, way.from))).toBeLessThan(1e-6);
      expect(apart(way.to, nearestOn(b, way.to))).toBeLessThan(1e-6);
      expect(closest(b, a).distance).toBeCloseTo(way.distance, 9);
    }),
  );
  expect(apartPairs).toBeGreaterThan(20);
});

const loop = (points: readonly (readonly [number, number])[]): Loop => points.map((at) => ({ at, bulge: 0 }));

describe('edges that face each other', () => {
  // a plate 100 × 60 with a slot 3 wide and 20 deep from the south, its west side at x = 40
  const slotted = loop([
    [0, 0],
    [40, 0],
    [40, 20],
    [43, 20],
    [43, 0],
    [100, 0],
    [100, 60],
    [0, 60],
  ]);

  test('a slot is a gap as wide as it is, as deep as it is', () => {
    const [found, ...others] = facing(slotted, 4, 0);
    expect(others).toEqual([]);
    expect(found).toMatchObject({ across: 'gap', width: 3, length: 20, at: [41.5, 10] });
  });

  test('what is no nearer than asked for is left out, unless it is deep for its width', () => {
    expect(facing(slotted, 3, 0)).toEqual([]);
    expect(facing(slotted, 0, 1 / 5)).toHaveLength(1);
    expect(facing(slotted, 0, 1 / 7)).toEqual([]);
  });

  test('a strip of metal', () => {
    const [found] = facing(
      loop([
        [0, 0],
        [100, 0],
        [100, 4],
        [0, 4],
      ]),
      5,
      0,
    );
    expect(found).toMatchObject({ across: 'metal', width: 4, length: 100, at: [50, 2] });
    // round each end of it the outline is as long as the strip is wide
    expect(found?.round).toEqual([4, 4]);
  });

  test('a V notch and the tip of a tab with slanted sides face nothing', () => {
    const notch = loop([
      [0, 0],
      [40, 0],
      [49.5, 10],
      [50.5, 10],
      [60, 0],
      [100, 0],
      [100, 60],
      [0, 60],
    ]);
    expect(facing(notch, 5, 0)).toEqual([]);
    const tip = loop([
      [0, 0],
      [100, 0],
      [51, 40],
      [49, 40],
    ]);
    expect(facing(tip, 5, 0)).toEqual([]);
  });

  test('sides that open by a few degrees still make a slot, narrowest at its end', () => {
    const taper = loop([
      [0, 0],
      [39, 0],
      [40, 20],
      [42, 20],
      [43, 0],
      [100, 0],
      [100, 60],
      [0, 60],
    ]);
    expect(facing(taper, 4, 0)).toMatchObject([{ across: 'gap', width: 2 }]);
  });

  test('round cuts: a bite of radius 5 leaves 2 mm to the other edge', () => {
    const bite: Loop = [
      { at: [0, 0], bulge: 0 },
      { at: [100, 0], bulge: 0 },
      { at: [100, 7], bulge: 0 },
      { at: [55, 7], bulge: -1 },
      { at: [45, 7], bulge: 0 },
      { at: [0, 7], bulge: 0 },
    ];
    const [found] = facing(bite, 3, 0);
    expect(found).toMatchObject({ across: 'metal', at: [50, 1] });
    expect(found?.width).toBeCloseTo(2, 9);
  });

  test('turned, moved and the other way round, the same are found', () => {
    const turn = ([x, y]: Point): Point => [x * 0.8 - y * 0.6 + 7, x * 0.6 + y * 0.8 - 3];
    const turned = slotted.map(({ at, bulge }) => ({ at: turn(at), bulge }));
    const shifted = [...turned.slice(3), ...turned.slice(0, 3)];
    for (const shape of [turned, shifted]) {
      const [found] = facing(shape, 4, 0);
      expect(found?.width).toBeCloseTo(3, 9);
      expect(found?.length).toBeCloseTo(20, 9);
      const at = turn([41.5, 10]);
      expect(found?.at[0]).toBeCloseTo(at[0], 9);
      expect(found?.at[1]).toBeCloseTo(at[1], 9);
    }
  });
});
