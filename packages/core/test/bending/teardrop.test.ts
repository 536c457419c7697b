import { hemFold, leastHemLength } from '@tinwright/core/family';
import fc from 'fast-check';
import { expect, test } from 'vitest';

// A teardrop in coordinates: the sheet comes along x, its inside face on y = 0, bends upwards from x = 0 round
// (0, R) and runs straight on. Points are turned about the centre; nothing here knows how the fold was solved.

type Point = readonly [number, number];

interface Teardrop {
  /** Edge on the inside and on the outside face. */
  readonly edge: readonly [Point, Point];
  readonly width: number;
  readonly insideWidth: number;
  readonly straight: number;
}

function teardrop(length: number, T: number, gap: number | undefined): Teardrop {
  const fold = hemFold({ type: 'teardrop', length, gap }, T);
  const R = fold.insideRadius;
  const about = (from: Point, degrees: number): Point => {
    const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const [x, y] = [from[0], from[1] - R];
    return [x * c - y * s, R + x * s + y * c];
  };
  // the leg is measured from the outer tangent, one R + T past the tangent line
  const straight = fold.leg - (R + T);
  const edge = [about([straight, 0], fold.angle), about([straight, -T], fold.angle)] as const;
  const outer = Array.from({ length: 721 }, (_, i) => about([0, -T], (fold.angle * i) / 720));
  const inner = Array.from({ length: 721 }, (_, i) => about([0, 0], (fold.angle * i) / 720));
  const xs = [...outer, ...edge].map(([x]) => x);
  return {
    edge,
    // with the furthest point of the fold, which the steps may miss
    width: Math.max(...xs, about([0, -T], 90)[0]) - Math.min(...xs),
    insideWidth: Math.max(...inner.map(([, y]) => y), about([0, 0], 180)[1]),
    straight,
  };
}

test('a teardrop 12 wide of 1 mm sheet: the edge comes back to 0.25 mm over the face', () => {
  const { edge } = teardrop(12, 1, undefined);
  expect(edge[0][1]).toBeCloseTo(0.25, 9);
  expect(edge[1][1]).toBeGreaterThan(0.25);
});

test('a teardrop 12 wide of 1 mm sheet: 12 mm over all, two thicknesses inside', () => {
  const { width, insideWidth } = teardrop(12, 1, undefined);
  expect(width).toBeCloseTo(12, 9);
  expect(insideWidth).toBeCloseTo(2, 9);
});

test('a teardrop: bent through more than 180°, an open hem exactly', () => {
  expect(hemFold({ type: 'teardrop', length: 12 }, 1).angle).toBeGreaterThan(181);
  expect(hemFold({ type: 'open', length: 12 }, 1).angle).toBe(180);
});

test('a wide teardrop: turned less than a short one of the same radius', () => {
  const angle = (length: number) => hemFold({ type: 'teardrop', length }, 1).angle;
  expect(angle(30)).toBeLessThan(angle(12));
  expect(angle(12)).toBeLessThan(angle(6));
});

test.each([
  [1, undefined],
  [1, 0.5],
  [1, 1],
  [1, 1.5],
  [0.8, 4],
  [2, 3],
])(
  'the least teardrop of %d mm sheet, gap %s: keeps a straight leg of the gap or one thickness',
  (T, gap) => {
    const least = leastHemLength({ type: 'teardrop', gap }, T);
    const found = teardrop(least, T, gap);
    expect(found.straight).toBeCloseTo(Math.max(T, gap ?? 2 * T), 8);
    expect(found.width).toBeCloseTo(least, 8);
  },
);

const sheetGapAndMore = fc.tuple(
  fc.double({ min: 0.3, max: 3, noNaN: true }),
  fc.double({ min: 0.5, max: 8, noNaN: true }),
  fc.double({ min: 0, max: 40, noNaN: true }),
);

test('any teardrop from the least width up: as wide over all as asked, within its gap', () => {
  fc.assert(
    fc.property(sheetGapAndMore, ([T, times, more]) => {
      const gap = times * T;
      const length = leastHemLength({ type: 'teardrop', gap }, T) + more * T;
      const found = teardrop(length, T, gap);
      expect(found.width).toBeCloseTo(length, 8);
      expect(found.insideWidth).toBeCloseTo(gap, 8);
    }),
  );
});

test('any teardrop from the least width up: the edge comes back to a quarter thickness', () => {
  fc.assert(
    fc.property(sheetGapAndMore, ([T, times, more]) => {
      const gap = times * T;
      const { edge } = teardrop(leastHemLength({ type: 'teardrop', gap }, T) + more * T, T, gap);
      expect(edge[0][1]).toBeCloseTo(T / 4, 8);
      expect(edge[1][1]).toBeGreaterThan(edge[0][1]);
    }),
  );
});
