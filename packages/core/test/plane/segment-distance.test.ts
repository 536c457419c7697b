import { isArc, type Point, type Segment } from '@tinwright/core';
import { arcOf, segmentDistance } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const line = (from: Point, to: Point): Segment => ({ from, to, bulge: 0 });

test.each<[string, Segment, Segment, number]>([
  ['crossing lines', line([0, 0], [10, 10]), line([0, 10], [10, 0]), 0],
  ['side by side', line([0, 0], [10, 0]), line([2, 3], [8, 3]), 3],
  ['end to end', line([0, 0], [10, 0]), line([13, 4], [20, 4]), 5],
  ['a half circle over a line', line([-10, 0], [10, 0]), { from: [-2, 9], to: [2, 9], bulge: 1 }, 7],
  ['a half circle away from a line', line([-10, 0], [10, 0]), { from: [2, 9], to: [-2, 9], bulge: 1 }, 9],
  [
    'two half circles back to back',
    { from: [0, -2], to: [0, 2], bulge: 1 },
    { from: [9, 3], to: [9, -3], bulge: 1 },
    4,
  ],
  [
    'one circle inside another',
    { from: [5, 0], to: [-5, 0], bulge: 1 },
    { from: [2, 1], to: [-2, 1], bulge: 1 },
    2,
  ],
])('%s', (_, a, b, distance) => {
  expect(segmentDistance(a, b)).toBeCloseTo(distance, 9);
  expect(segmentDistance(b, a)).toBeCloseTo(distance, 9);
});

const point = fc.tuple(
  fc.double({ min: -50, max: 50, noNaN: true }),
  fc.double({ min: -50, max: 50, noNaN: true }),
);
const segment = fc
  .record({
    from: point,
    to: point,
    bulge: fc.oneof(fc.constant(0), fc.double({ min: -2, max: 2, noNaN: true })),
  })
  .filter((s) => Math.hypot(s.to[0] - s.from[0], s.to[1] - s.from[1]) > 0.1);

const along = (s: Segment, t: number): Point => {
  if (!isArc(s)) return [s.from[0] + (s.to[0] - s.from[0]) * t, s.from[1] + (s.to[1] - s.from[1]) * t];
  const { centre, radius, start, sweep } = arcOf(s);
  return [centre[0] + radius * Math.cos(start + sweep * t), centre[1] + radius * Math.sin(start + sweep * t)];
};

test('random segments: no two points of a fine sampling are nearer, and some are nearly as near', () => {
  fc.assert(
    fc.property(segment, segment, (a, b) => {
      const shares = Array.from({ length: 201 }, (_, k) => k / 200);
      const [ps, qs] = [shares.map((t) => along(a, t)), shares.map((t) => along(b, t))];
      const sampled = Math.min(
        ...ps.map((p) => Math.min(...qs.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1])))),
      );
      const exact = segmentDistance(a, b);
      expect(exact).toBeLessThanOrEqual(sampled + 1e-6);
      expect(exact).toBeGreaterThan(sampled - 5); // steps of up to 4 mm
    }),
  );
});
