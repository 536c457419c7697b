import type { Loop, Point } from '@tinwright/core';
import { crossesItself } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const corner = (x: number, y: number, bulge = 0) => ({ at: [x, y] as const, bulge });

test.each<[string, Loop, boolean]>([
  ['a square', [corner(0, 0), corner(10, 0), corner(10, 10), corner(0, 10)], false],
  ['a bow tie', [corner(0, 0), corner(10, 10), corner(10, 0), corner(0, 10)], true],
  ['two arcs that share both their ends', [corner(0, 0, 1), corner(10, 0, 1)], false],
  [
    'an arc that goes through a straight side once',
    [corner(0, 0), corner(10, 0), corner(10, 10, 0.1), corner(5, -5)],
    true,
  ],
  [
    'a side that ends on another',
    [corner(0, 0), corner(10, 0), corner(10, 10), corner(5, 0), corner(0, 10)],
    true,
  ],
])('%s', (_, loop, crosses) => {
  expect(crossesItself(loop)).toBe(crosses);
});

const square: readonly Point[] = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];

// straight outlines, as the sections of press tools are
test.each<[string, readonly Point[], boolean]>([
  ['a square: no', square, false],
  ['turned the other way: no', square.toReversed(), false],
  [
    'a bow tie',
    [
      [0, 0],
      [10, 10],
      [10, 0],
      [0, 10],
    ],
    true,
  ],
  [
    'a corner on another side',
    [
      [0, 0],
      [10, 0],
      [10, 10],
      [5, 0],
      [0, 10],
    ],
    true,
  ],
  [
    'an L: no',
    [
      [0, 0],
      [10, 0],
      [10, 4],
      [4, 4],
      [4, 10],
      [0, 10],
    ],
    false,
  ],
  [
    'two sides on one line that do not meet: no',
    [
      [0, 0],
      [2, 0],
      [2, 4],
      [6, 4],
      [6, 0],
      [8, 0],
      [8, 9],
      [0, 9],
    ],
    false,
  ],
  [
    'a corner twice',
    [
      [0, 0],
      [10, 0],
      [5, 5],
      [10, 10],
      [0, 10],
      [5, 5],
    ],
    true,
  ],
])('%s', (_, outline, crosses) => {
  expect(crossesItself(outline.map((at) => ({ at, bulge: 0 })))).toBe(crosses);
});

test.each<[string, Loop, boolean]>([
  [
    'an arc that bulges over the next side but one',
    [corner(0, 0), corner(10, 0), corner(10, 4, -1.4), corner(0, 4)],
    true,
  ],
  ['an arc that bulges beside it', [corner(0, 0), corner(10, 0), corner(10, 4, -0.3), corner(0, 4)], false],
  ['an arc through its own neighbour', [corner(0, 0), corner(10, 0, -2), corner(10, 3), corner(0, 3)], true],
  [
    'two arcs apart that cross each other',
    [corner(0, 0, -0.9), corner(20, 0), corner(20, 6, -0.9), corner(0, 6)],
    true,
  ],
  [
    'two arcs apart that do not',
    [corner(0, 0, -0.2), corner(20, 0), corner(20, 6, -0.2), corner(0, 6)],
    false,
  ],
  // the ends of a ring's half: their boxes overlap, they do not meet
  ['two arcs round one centre', [corner(10, 0, 1), corner(-10, 0), corner(-8, 0, -1), corner(8, 0)], false],
  ['two arcs over one chord that cross it alike', [corner(0, 0, 0.5), corner(10, 0, 0.5)], false],
])('%s, wherever it lies and starts', (_, loop, crosses) => {
  for (const [x, y] of [
    [0, 0],
    [100, 0],
    [0, 100],
    [-100, -50],
  ] as const)
    for (const start of loop.keys()) {
      const moved = [...loop.slice(start), ...loop.slice(0, start)].map(({ at, bulge }) =>
        corner(at[0] + x, at[1] + y, bulge),
      );
      expect(crossesItself(moved)).toBe(crosses);
    }
});

test('any polygon of whole numbers: two sides that are no neighbours share a point, or none do', () => {
  const whole = fc.integer({ min: -6, max: 6 });
  const polygons = fc.uniqueArray(fc.tuple(whole, whole), {
    minLength: 4,
    maxLength: 7,
    selector: (p) => p.join(),
  });
  type P = readonly [number, number];
  const turn = (a: P, b: P, c: P) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  const between = (a: number, b: number, v: number) => Math.min(a, b) <= v && v <= Math.max(a, b);
  const onIt = (a: P, b: P, p: P) =>
    turn(a, b, p) === 0 && between(a[0], b[0], p[0]) && between(a[1], b[1], p[1]);
  const share = ([a, b]: readonly [P, P], [c, d]: readonly [P, P]) => {
    const proper = turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
    return proper || onIt(a, b, c) || onIt(a, b, d) || onIt(c, d, a) || onIt(c, d, b);
  };
  let crossing = 0;
  fc.assert(
    fc.property(polygons, fc.tuple(whole, whole), (points, [x, y]) => {
      const n = points.length;
      const sides = points.map((p, i) => [p, points[(i + 1) % n] as P] as const);
      const asked = sides.some((a, i) =>
        sides.some((b, j) => j > i + 1 && !(i === 0 && j === n - 1) && share(a, b)),
      );
      if (asked) crossing += 1;
      expect(crossesItself(points.map((p) => corner(p[0] + 9 * x, p[1] + 9 * y)))).toBe(asked);
    }),
    { numRuns: 300 },
  );
  expect(crossing).toBeGreaterThan(0);
});
