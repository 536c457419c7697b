import type { Point } from '@tinwright/core';
import { convexHull, convexPieces, polygonArea } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

test('a convex polygon is its own piece, a corner on a straight side included', () => {
  const square: Point[] = [
    [0, 0],
    [5, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ];
  expect(convexPieces(square)).toEqual([square]);
});

test('an L is two pieces', () => {
  const pieces = convexPieces([
    [0, 0],
    [10, 0],
    [10, 4],
    [4, 4],
    [4, 10],
    [0, 10],
  ]);
  expect(pieces).toHaveLength(2);
  expect(pieces.reduce((s, p) => s + polygonArea(p), 0)).toBeCloseTo(64, 12);
});

test('cuts that end in a corner leave no slivers', () => {
  // both inner corners of this U look at each other
  const pieces = convexPieces([
    [0, 0],
    [12, 0],
    [12, 10],
    [8, 10],
    [8, 4],
    [4, 4],
    [4, 10],
    [0, 10],
  ]);
  expect(pieces.every((p) => polygonArea(p) > 1)).toBe(true);
  expect(pieces.reduce((s, p) => s + polygonArea(p), 0)).toBeCloseTo(96, 12);
});

/** A comb of random teeth on a bar: simple, with many corners that turn right. */
const combs = fc
  .array(
    fc.tuple(
      fc.integer({ min: 1, max: 20 }),
      fc.integer({ min: 1, max: 30 }),
      fc.integer({ min: -3, max: 3 }),
    ),
    {
      minLength: 1,
      maxLength: 8,
    },
  )
  .map((teeth) => {
    const top: Point[] = [];
    let x = 0;
    for (const [gap, height, lean] of teeth) {
      x += gap + 4;
      top.push([x, 10], [x + lean * 0.3, 10 + height], [x + 3 + lean * 0.3, 10 + height], [x + 3, 10]);
      x += 3;
    }
    const outline: Point[] = [[0, 0], [x + 5, 0], [x + 5, 10], ...top.toReversed(), [0, 10]];
    return outline;
  });

test('random combs: pieces are convex and together as large as the comb', () => {
  fc.assert(
    fc.property(combs, (shape) => {
      const pieces = convexPieces(shape);
      for (const piece of pieces)
        piece.forEach((p, i) => {
          const [q, r] = [piece[(i + 1) % piece.length] as Point, piece[(i + 2) % piece.length] as Point];
          const [u, v] = [[q[0] - p[0], q[1] - p[1]] as const, [r[0] - q[0], r[1] - q[1]] as const];
          expect((u[0] * v[1] - u[1] * v[0]) / (Math.hypot(...u) * Math.hypot(...v))).toBeGreaterThan(-1e-6);
        });
      expect(pieces.reduce((s, p) => s + polygonArea(p), 0)).toBeCloseTo(polygonArea(shape), 6);
    }),
  );
});

test('a hull goes once round outside of all points, wherever they lie', () => {
  const far = fc.record({ x: fc.integer({ min: -500, max: 500 }), y: fc.integer({ min: -500, max: 500 }) });
  const near = fc.array(fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 })), {
    minLength: 3,
    maxLength: 12,
  });
  fc.assert(
    fc.property(far, near, ({ x, y }, list) => {
      const points = list.map(([u, v]): Point => [x + u, y + v]);
      const hull = convexHull(points);
      fc.pre(hull.length > 2 && polygonArea(hull) > 0);
      for (const [i, a] of hull.entries()) {
        const b = hull[(i + 1) % hull.length] as Point;
        for (const p of points)
          expect((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])).toBeGreaterThanOrEqual(0);
      }
    }),
  );
});
