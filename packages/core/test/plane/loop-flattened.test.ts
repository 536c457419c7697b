import type { Point } from '@tinwright/core';
import { type Loop, segments } from '@tinwright/core';
import { circleLoop, flattened, loopArea, loopBox, loopLength } from '@tinwright/core/internal';
import { areaD, type PathD } from 'clipper2-ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';

// An independent reading of the bulge: halve the arc again and again through its middle point, which lies
// bulge × half the chord to the right of the chord (definition of the bulge), then measure the straight bits.
function halved(from: Point, to: Point, bulge: number, times: number): readonly Point[] {
  if (times === 0 || bulge === 0) return [from];
  const middle: Point = [
    (from[0] + to[0] + bulge * (to[1] - from[1])) / 2,
    (from[1] + to[1] - bulge * (to[0] - from[0])) / 2,
  ];
  const half = Math.tan(Math.atan(bulge) / 2);
  return [...halved(from, middle, half, times - 1), ...halved(middle, to, half, times - 1)];
}

const flat = (loop: Loop): readonly Point[] =>
  segments(loop).flatMap((s) => halved(s.from, s.to, s.bulge, 9));
const path = (points: readonly Point[]): PathD => points.map(([x, y]) => ({ x, y }));

const coordinate = fc.integer({ min: -1000, max: 1000 }).map((v) => v / 10);
const vertex = fc.record({
  at: fc.tuple(coordinate, coordinate),
  bulge: fc.oneof(
    fc.constant(0),
    fc.double({ min: 1e-4, max: 2.5, noNaN: true }),
    fc.double({ min: -2.5, max: -1e-4, noNaN: true }),
  ),
});
// 512 straight bits an arc of up to 273°: lengths and areas agree to better than 1 in 100,000
const loop = fc.uniqueArray(vertex, { minLength: 2, maxLength: 7, selector: (v) => v.at.join() });

test('any loop of lines and arcs: the area is that of the finely flattened loop', () => {
  fc.assert(
    fc.property(loop, (any) => {
      const points = flat(any);
      const span = loopLength(any) ** 2;
      expect(Math.abs(areaD(path(points)) - loopArea(any))).toBeLessThan(1e-5 * span);
    }),
  );
});

test('any loop of lines and arcs: the length is that of the finely flattened loop', () => {
  fc.assert(
    fc.property(loop, (any) => {
      const points = flat(any);
      const length = points.reduce((sum, p, i) => {
        const q = points[(i + 1) % points.length] as Point;
        return sum + Math.hypot(q[0] - p[0], q[1] - p[1]);
      }, 0);
      expect(length).toBeLessThanOrEqual(loopLength(any) + 1e-6);
      expect(length).toBeGreaterThan(loopLength(any) * (1 - 1e-5));
    }),
  );
});

test('any loop of lines and arcs: the box holds the flattened loop and is not larger', () => {
  fc.assert(
    fc.property(loop, (any) => {
      const { min, max } = loopBox(any);
      const points = flat(any);
      const slack = loopLength(any) * 1e-5;
      for (const k of [0, 1] as const) {
        const found = points.map((p) => p[k]);
        expect(Math.abs(Math.min(...found) - min[k])).toBeLessThan(slack);
        expect(Math.abs(Math.max(...found) - max[k])).toBeLessThan(slack);
        expect(Math.min(...found)).toBeGreaterThan(min[k] - 1e-6);
        expect(Math.max(...found)).toBeLessThan(max[k] + 1e-6);
      }
    }),
  );
});

test('chords of a circle lie on it, none further off than it may be', () => {
  const points = flattened(circleLoop([3, -2], 10), 0.01);
  expect(points.length).toBeGreaterThan(30);
  points.forEach(([x, y], i) => {
    const [u, v] = points[(i + 1) % points.length] as Point;
    expect(Math.hypot(x - 3, y + 2)).toBeCloseTo(10, 9);
    expect(10 - Math.hypot((x + u) / 2 - 3, (y + v) / 2 + 2)).toBeLessThan(0.0101);
  });
});
