import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clipped, clippedLine } from '../../src/figure/clip.js';

const box = { min: [0, 0], max: [10, 5] } as const;
const point = fc.tuple(fc.integer({ min: -10, max: 20 }), fc.integer({ min: -10, max: 20 }));

test('a line through a box is cut at its edges, one inside stays, one outside is gone', () => {
  expect(clippedLine([-5, 2], [15, 2], box)).toEqual([
    [0, 2],
    [10, 2],
  ]);
  expect(clippedLine([1, 1], [9, 4], box)).toEqual([
    [1, 1],
    [9, 4],
  ]);
  expect(clippedLine([-5, 6], [15, 6], box)).toBeNull();
});

test('what is cut lies in the box and on the line', () => {
  fc.assert(
    fc.property(point, point, (a, b) => {
      const cut = clippedLine(a, b, box);
      for (const p of cut ?? []) {
        expect(p[0]).toBeGreaterThanOrEqual(-1e-9);
        expect(p[0]).toBeLessThanOrEqual(10 + 1e-9);
        expect(p[1]).toBeGreaterThanOrEqual(-1e-9);
        expect(p[1]).toBeLessThanOrEqual(5 + 1e-9);
        expect((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])).toBeCloseTo(0, 6);
      }
    }),
  );
});

test('a closed run that leaves the box and comes back is in pieces; the one it starts in is whole', () => {
  const triangle = [
    [5, 2],
    [5, 8],
    [20, 2],
  ] as const;
  expect(clipped(triangle, true, box)).toEqual([
    [
      [10, 2],
      [5, 2],
      [5, 5],
    ],
  ]);
});
