import type { Point } from '@tinwright/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  capacity,
  type FastenerField,
  type FastenerRun,
  fieldOf,
  type KeepOff,
  pointsOn,
  runOf,
  share,
} from '../../src/joining/layout.js';

const rectangle = (w: number, h: number): readonly Point[] => [
  [0, 0],
  [w, 0],
  [w, h],
  [0, h],
];

/** The sides of a counter-clockwise shape, each to be kept off as far as `keep` says. */
function sides(shape: readonly Point[], keep: (i: number) => number): readonly KeepOff[] {
  return shape.map((from, i) => {
    const to = shape[(i + 1) % shape.length] as Point;
    return { from, to, keep: keep(i), what: 'edge' };
  });
}

const box = ({ shape }: FastenerField) => {
  const [xs, ys] = [shape.map((p) => p[0]), shape.map((p) => p[1])];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
};

/** Distance of a point to the left of the line through two others. */
function left([x, y]: Point, { from, to }: KeepOff): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return (dx * (y - from[1]) - dy * (x - from[0])) / Math.hypot(dx, dy);
}

describe('where fasteners may go', () => {
  test('a strip of 60 by 20 kept off by 7 at three edges and 9 at the bend below: 46 by 4 is left', () => {
    const shape = rectangle(60, 20);
    const field = fieldOf(
      shape,
      sides(shape, (i) => (i === 0 ? 9 : 7)),
    );
    expect(field.share).toBe(1);
    expect(box(field)).toEqual([7, 9, 53, 13].map((v) => expect.closeTo(v, 9)));
  });

  test('too narrow: distances shrink in step, by the share that just leaves a line', () => {
    const shape = rectangle(60, 12);
    const field = fieldOf(
      shape,
      sides(shape, (i) => (i === 0 ? 9 : 7)),
    );
    // across, 9 + 7 wanted on 12: three quarters of each
    expect(field.share).toBeCloseTo(12 / 16, 6);
    const [, low, , high] = box(field);
    expect(low).toBeCloseTo(0.75 * 9, 4);
    expect(high).toBeCloseTo(12 - 0.75 * 7, 4);
  });

  test('nothing to keep off: the whole overlap', () => {
    expect(fieldOf(rectangle(30, 10), [])).toEqual({ shape: rectangle(30, 10), share: 1 });
  });

  test('any place in the field keeps its share of every distance, on random overlaps', () => {
    const shapes = fc.record({
      w: fc.double({ min: 5, max: 200, noNaN: true }),
      h: fc.double({ min: 5, max: 60, noNaN: true }),
      slant: fc.double({ min: 0, max: 2, noNaN: true }),
      keeps: fc.array(fc.double({ min: 0.5, max: 20, noNaN: true }), { minLength: 4, maxLength: 4 }),
    });
    fc.assert(
      fc.property(shapes, ({ w, h, slant, keeps }) => {
        const shape: readonly Point[] = [
          [0, 0],
          [w, 0],
          [w - slant, h],
          [slant, h],
        ];
        const lines = sides(shape, (i) => keeps[i] as number);
        const field = fieldOf(shape, lines);
        expect(field.shape.length).toBeGreaterThan(2);
        expect(field.share).toBeGreaterThan(0);
        for (const p of field.shape)
          for (const line of lines)
            expect(left(p, line)).toBeGreaterThanOrEqual(line.keep * field.share - 1e-6);
      }),
    );
  });
});

const run = (w: number, h: number, keep = 0): FastenerRun => {
  const shape = rectangle(w, h);
  return runOf(
    shape,
    fieldOf(
      shape,
      sides(shape, () => keep),
    ),
  );
};

describe('a run', () => {
  test('it goes along the longer side, from end to end of the field', () => {
    const { from, to, along } = run(60, 20, 7);
    expect(Math.abs(along[0])).toBeCloseTo(1, 9);
    expect(to - from).toBeCloseTo(46, 9);
    const upright = run(20, 60, 7);
    expect(Math.abs(upright.along[1])).toBeCloseTo(1, 9);
    expect(upright.to - upright.from).toBeCloseTo(46, 9);
  });

  test('one fastener stands in the middle', () => {
    expect(pointsOn(run(60, 20, 7), 1)).toEqual([[expect.closeTo(30, 9), expect.closeTo(10, 9)]]);
  });

  test('four stand evenly, the outer two at the ends of the field, all in its middle across', () => {
    const points = pointsOn(run(60, 20, 7), 4);
    const xs = points.map((p) => p[0]).toSorted((a, b) => a - b);
    for (const [i, x] of [7, 7 + 46 / 3, 7 + 92 / 3, 53].entries()) expect(xs[i]).toBeCloseTo(x, 9);
    for (const p of points) expect(p[1]).toBeCloseTo(10, 9);
  });

  test('they stay in the middle of a field that tapers', () => {
    const shape: readonly Point[] = [
      [0, 0],
      [60, 0],
      [60, 10],
      [0, 30],
    ];
    const points = pointsOn({ field: { shape, share: 1 }, along: [1, 0], from: 0, to: 60 }, 3);
    expect(points.map((p) => p[0])).toEqual([0, 30, 60]);
    for (const [x, y] of points) expect(y).toBeCloseTo((30 - x / 3) / 2, 9);
  });

  test('any number stands at one pitch and inside the field, on random runs', () => {
    const arbitrary = fc.record({
      w: fc.double({ min: 20, max: 400, noNaN: true }),
      h: fc.double({ min: 10, max: 19, noNaN: true }),
      keep: fc.double({ min: 0, max: 4, noNaN: true }),
      count: fc.integer({ min: 1, max: 40 }),
    });
    fc.assert(
      fc.property(arbitrary, ({ w, h, keep, count }) => {
        const points = pointsOn(run(w, h, keep), count);
        expect(points).toHaveLength(count);
        for (const [x, y] of points) {
          expect(Math.min(x, w - x, y, h - y)).toBeGreaterThanOrEqual(keep - 1e-6);
        }
        const gaps = points.slice(1).map(([x, y], i) => {
          const [u, v] = points[i] as Point;
          return Math.hypot(x - u, y - v);
        });
        for (const gap of gaps) expect(gap).toBeCloseTo((w - 2 * keep) / (count - 1), 6);
      }),
    );
  });

  test.each([
    [46, 20, 3],
    [40, 20, 3],
    [39.9, 20, 2],
    [19, 20, 1],
    [0, 20, 1],
  ])('%d mm at a pitch of %d holds %d', (length, pitch, count) => {
    const field = { shape: rectangle(length, 1), share: 1 };
    expect(capacity({ field, along: [1, 0], from: 0, to: length }, pitch)).toBe(count);
  });
});

describe('how many on each run', () => {
  const lengths = (...list: readonly number[]): readonly FastenerRun[] =>
    list.map((length) => ({
      field: { shape: rectangle(length, 5), share: 1 },
      along: [1, 0],
      from: 0,
      to: length,
    }));
  const needs = { pitch: 20, usualPitch: 25 };

  test('a count is shared by length, at least one each', () => {
    expect(share(lengths(100, 50, 50), { count: 8, pitch: null }, needs)).toEqual([4, 2, 2]);
    expect(share(lengths(150, 1), { count: 5, pitch: null }, needs)).toEqual([4, 1]);
  });

  test('fewer than there are overlaps: the longest get them', () => {
    expect(share(lengths(10, 30, 20), { count: 2, pitch: null }, needs)).toEqual([0, 1, 1]);
    expect(share(lengths(10, 30, 20), { count: 1, pitch: null }, needs)).toEqual([0, 1, 0]);
  });

  test('a pitch fills every run; nothing given takes the usual pitch', () => {
    expect(share(lengths(100, 45), { count: null, pitch: 10 }, needs)).toEqual([11, 5]);
    expect(share(lengths(100, 45), { count: null, pitch: null }, needs)).toEqual([5, 2]);
  });

  test('a single overlap gets two where they can stand, so that the parts do not turn', () => {
    expect(share(lengths(22), { count: null, pitch: null }, needs)).toEqual([2]);
    expect(share(lengths(19), { count: null, pitch: null }, needs)).toEqual([1]);
    expect(share(lengths(22, 22), { count: null, pitch: null }, needs)).toEqual([1, 1]);
    expect(share(lengths(22), { count: 1, pitch: null }, needs)).toEqual([1]);
    expect(share(lengths(22), { count: null, pitch: 25 }, needs)).toEqual([1]);
  });

  test('every fastener asked for is placed, and no run is worse off by more than one, on random runs', () => {
    const arbitrary = fc.tuple(
      fc.array(fc.double({ min: 1, max: 300, noNaN: true }), { minLength: 1, maxLength: 6 }),
      fc.integer({ min: 1, max: 60 }),
    );
    fc.assert(
      fc.property(arbitrary, ([list, count]) => {
        const counts = share(lengths(...list), { count, pitch: null }, needs);
        expect(counts.reduce((a, b) => a + b, 0)).toBe(count);
        if (count < list.length) return;
        // taking one from any run and giving it to another never lets the widest share shrink
        const widest = (of: readonly number[]) => Math.max(...list.map((l, i) => l / (of[i] as number)));
        for (const [i, n] of counts.entries())
          for (const [j, m] of counts.entries()) {
            if (i === j || n < 2) continue;
            const moved = counts.with(i, n - 1).with(j, m + 1);
            expect(widest(moved)).toBeGreaterThanOrEqual(widest(counts) - 1e-5);
          }
      }),
    );
  });
});
