import type { Point, Segment } from '@tinwright/core';
import { bulgeAround, meetings } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lineCircle } from '../../src/plane/meet.js';

const line = (from: Point, to: Point): Segment => ({ from, to, bulge: 0 });
const polar = (c: Point, r: number, degrees: number): Point => [
  c[0] + r * Math.cos((degrees * Math.PI) / 180),
  c[1] + r * Math.sin((degrees * Math.PI) / 180),
];
/** Counter-clockwise arc round `c` from one angle to another, degrees. */
const arc = (c: Point, r: number, a: number, b: number): Segment => ({
  from: polar(c, r, a),
  to: polar(c, r, b),
  bulge: Math.tan((((b - a) / 4) * Math.PI) / 180),
});

/** Both ways round must find the expected points, in any order. */
function expectMeetings(a: Segment, b: Segment, expected: readonly Point[], digits = 9): void {
  for (const found of [meetings(a, b), meetings(b, a)]) {
    expect(found).toHaveLength(expected.length);
    for (const p of expected) {
      const nearest = Math.min(...found.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1])));
      expect(nearest).toBeLessThan(10 ** -digits);
    }
  }
}

test('two lines that cross: one point', () => {
  expectMeetings(line([0, 0], [4, 4]), line([0, 4], [4, 0]), [[2, 2]]);
});

test('two lines that would cross further on: none', () => {
  expectMeetings(line([0, 0], [1, 1]), line([0, 4], [4, 0]), []);
});

test('a line that ends on another: that end', () => {
  expectMeetings(line([0, 0], [10, 0]), line([3, 0], [3, 8]), [[3, 0]]);
});

test('two lines from one corner: the corner', () => {
  expectMeetings(line([0, 0], [10, 0]), line([10, 0], [10, 5]), [[10, 0]]);
});

test('parallel lines 0.001 mm apart: none', () => {
  expectMeetings(line([0, 0], [10, 0]), line([0, 0.001], [10, 0.001]), []);
});

test('lines that overlap: the ends of the shared run', () => {
  expectMeetings(line([0, 0], [10, 0]), line([15, 0], [6, 0]), [
    [6, 0],
    [10, 0],
  ]);
});

test('a line within another: its two ends; lines end to end: one point; apart on one line: none', () => {
  expectMeetings(line([0, 0], [10, 0]), line([2, 0], [5, 0]), [
    [2, 0],
    [5, 0],
  ]);
  expectMeetings(line([0, 0], [10, 0]), line([10, 0], [15, 0]), [[10, 0]]);
  expectMeetings(line([0, 0], [10, 0]), line([11, 0], [15, 0]), []);
});

test('a line through a circle of radius 5 at a height of 3: 4 either side', () => {
  const half = arc([0, 0], 5, 0, 180);
  expectMeetings(line([-9, 3], [9, 3]), half, [
    [-4, 3],
    [4, 3],
  ]);
  expectMeetings(line([0, 3], [9, 3]), half, [[4, 3]]);
  expectMeetings(line([-3, 3], [3, 3]), half, []);
  expectMeetings(line([-9, -3], [9, -3]), half, []);
});

test('a line along the edge of a circle: the one point of touch', () => {
  expectMeetings(line([-9, 5], [9, 5]), arc([0, 0], 5, 0, 180), [[0, 5]]);
  expectMeetings(line([-9, 5.001], [9, 5.001]), arc([0, 0], 5, 0, 180), []);
});

test('a line that runs tangent into an arc: their shared end', () => {
  expectMeetings(line([0, -5], [-20, -5]), arc([0, 0], 5, -90, 0), [[0, -5]]);
});

test('the endless line through a segment: both points of the circle, none when it passes by', () => {
  const found = lineCircle(line([20, 3], [21, 3]), { centre: [0, 0], radius: 5 });
  expect(found.map(([x]) => Math.round(x * 1e9) / 1e9).toSorted((a, b) => a - b)).toEqual([-4, 4]);
  expect(lineCircle(line([20, 6], [21, 6]), { centre: [0, 0], radius: 5 })).toEqual([]);
  expect(lineCircle(line([1, 1], [1, 1]), { centre: [0, 0], radius: 5 })).toEqual([]);
});

test('two circles of radius 5, 6 apart: they cross 4 over and under the middle', () => {
  expectMeetings(arc([0, 0], 5, -90, 90), arc([6, 0], 5, 90, 270), [
    [3, 4],
    [3, -4],
  ]);
  expectMeetings(arc([0, 0], 5, 0, 90), arc([6, 0], 5, 90, 180), [[3, 4]]);
  expectMeetings(arc([0, 0], 5, 100, 200), arc([6, 0], 5, 90, 270), []);
});

test('circles that touch from outside or from inside: one point; apart or one within the other: none', () => {
  expectMeetings(arc([0, 0], 2, -90, 90), arc([5, 0], 3, 90, 270), [[2, 0]]);
  expectMeetings(arc([0, 0], 5, -90, 90), arc([2, 0], 3, -90, 90), [[5, 0]]);
  expectMeetings(arc([0, 0], 2, -90, 90), arc([5.001, 0], 3, 90, 270), []);
  expectMeetings(arc([0, 0], 5, -90, 90), arc([1, 0], 3, -90, 90), []);
  expectMeetings(arc([0, 0], 5, -90, 90), arc([0, 0], 3, -90, 90), []);
});

test('arcs over the same circle: the ends of the shared run', () => {
  const c: Point = [1, 2];
  expectMeetings(arc(c, 5, 0, 90), arc(c, 5, 45, 170), [polar(c, 5, 45), polar(c, 5, 90)]);
  expectMeetings(arc(c, 5, 0, 90), arc(c, 5, 20, 40), [polar(c, 5, 20), polar(c, 5, 40)]);
  expectMeetings(arc(c, 5, 0, 90), arc(c, 5, 90, 180), [polar(c, 5, 90)]);
  expectMeetings(arc(c, 5, 0, 90), arc(c, 5, 100, 180), []);
});

const coordinate = fc.integer({ min: -300, max: 300 }).map((v) => v / 10);
const point = fc.tuple(coordinate, coordinate);
const beyond = fc.double({ min: 0.2, max: 3, noNaN: true });

test('any two lines through a chosen point: that point', () => {
  fc.assert(
    fc.property(point, point, point, beyond, beyond, (p, a, b, s, t) => {
      const away = (q: Point, k: number): Point => [p[0] - k * (q[0] - p[0]), p[1] - k * (q[1] - p[1])];
      const turn = (a[0] - p[0]) * (b[1] - p[1]) - (a[1] - p[1]) * (b[0] - p[0]);
      fc.pre(Math.abs(turn) > 0.5);
      expectMeetings(line(a, away(a, s)), line(b, away(b, t)), [p], 8);
    }),
  );
});

test('any line through two chosen points of a circle: these two', () => {
  const angle = fc.integer({ min: 0, max: 359 });
  fc.assert(
    fc.property(point, fc.integer({ min: 1, max: 80 }), angle, angle, beyond, (c, r, a, b, t) => {
      fc.pre(Math.abs(a - b) > 5 && Math.abs(a - b) < 355);
      const [p, q] = [polar(c, r, a), polar(c, r, b)];
      const [u, v] = [q[0] - p[0], q[1] - p[1]];
      const long = line([p[0] - t * u, p[1] - t * v], [q[0] + t * u, q[1] + t * v]);
      expectMeetings(long, arc(c, r, Math.min(a, b) - 2, Math.max(a, b) + 2), [p, q], 7);
    }),
  );
});

test('any two circles round points of the middle line of two chosen points: these two', () => {
  const height = fc.integer({ min: -200, max: 200 }).map((v) => v / 10);
  fc.assert(
    fc.property(point, point, height, height, (p, q, h, k) => {
      const chord = Math.hypot(q[0] - p[0], q[1] - p[1]);
      fc.pre(chord > 1 && Math.abs(h - k) > 0.5);
      const n: Point = [-(q[1] - p[1]) / chord, (q[0] - p[0]) / chord];
      const centre = (d: number): Point => [(p[0] + q[0]) / 2 + d * n[0], (p[1] + q[1]) / 2 + d * n[1]];
      const over = (d: number): Segment => ({ from: p, to: q, bulge: bulgeAround(centre(d), p, q, 'ccw') });
      expectMeetings(over(h), over(k), [p, q], 7);
    }),
  );
});

test('two arcs off the origin: both points', () => {
  // circles of 5 round (20, 30) and (26, 38) meet on the middle line between, where 5² = 5² + 0: once, at (23, 34)
  expectMeetings(arc([20, 30], 5, 0, 120), arc([26, 38], 5, 180, 300), [[23, 34]], 3);
  // of 6 each: 6² − 5² = 11 either side of it
  const off = Math.sqrt(11);
  const across = [-0.8 * off, 0.6 * off] as const;
  expectMeetings(arc([20, 30], 6, -30, 150), arc([26, 38], 6, 150, 330), [
    [23 + across[0], 34 + across[1]],
    [23 - across[0], 34 - across[1]],
  ]);
});
