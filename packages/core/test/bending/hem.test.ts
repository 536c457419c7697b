import { kFactor } from '@tinwright/core';
import { hemFold, leastHemLength } from '@tinwright/core/family';
import { expect, test } from 'vitest';
import { foldedFlat } from '../../src/bending/folded-flat.js';

test('a closed hem: one fold of 180° without radius, its leg the finished width', () => {
  expect(hemFold({ type: 'closed', length: 12 }, 1)).toEqual({ angle: 180, insideRadius: 0, leg: 12 });
});

test('an open hem: a fold of 180° round half its gap, one thickness when none is given', () => {
  expect(hemFold({ type: 'open', length: 12 }, 0.8)).toEqual({ angle: 180, insideRadius: 0.4, leg: 12 });
  expect(hemFold({ type: 'open', length: 12, gap: 3 }, 0.8)).toEqual({
    angle: 180,
    insideRadius: 1.5,
    leg: 12,
  });
});

// (2 - πK)T, calculated; 0.43 T is also the trade figure, from memory
test.each([
  [0.5, 0.43],
  [0.45, 0.59],
  [0.4, 0.74],
  [0.33, 0.96],
])('closed hem at K = %d (calculated): the deduction is %d T', (k, times) => {
  for (const T of [0.5, 1, 2]) {
    const { angle, insideRadius } = hemFold({ type: 'closed', length: 15 }, T);
    const { deduction } = kFactor(k).terms({ thickness: T, insideRadius, angle });
    expect(deduction / T).toBeCloseTo(times, 2);
    expect(deduction).toBeCloseTo((2 - Math.PI * k) * T, 12);
  }
});

// by hand: 3T - π(0.5 + 0.45)T = 3T - 2.9845T
test('open hem of one thickness at K = 0.45 (calculated): the deduction is 0.0155 T, about nothing', () => {
  for (const T of [0.5, 1, 2]) {
    const { angle, insideRadius } = hemFold({ type: 'open', length: 15 }, T);
    const { deduction } = kFactor(0.45).terms({ thickness: T, insideRadius, angle });
    expect(deduction / T).toBeCloseTo(0.0155, 4);
  }
});

// NAVEDTRA 14251 Steelworker vol. 2: allowance of a single hem = its width, so nothing is to be deducted
test('Steelworker vol. 2, hem allowance = hem width: an open hem folded flat keeps to it within 0.02 T', () => {
  const { deduction } = foldedFlat({ thickness: 1, insideRadius: 0.5, angle: 180 });
  expect(Math.abs(deduction)).toBeLessThan(0.02);
});

test('folded flat without a radius: K = 0.5, so 0.43 T (trade figure, from memory)', () => {
  const terms = foldedFlat({ thickness: 2, insideRadius: 0, angle: 180 });
  expect(terms.allowance).toBeCloseTo(Math.PI, 12);
  expect(terms.deduction / 2).toBeCloseTo(0.43, 2);
  expect(terms.source).toBe('hem figures: common practice, no source');
});

test.each([
  ['closed', undefined, 2],
  ['open', undefined, 2.5],
  ['open', 3, 3.5],
] as const)(
  'least width of a %s hem with gap %s in 1 mm sheet: %d mm, fold and one thickness of leg',
  (type, gap, least) => {
    expect(leastHemLength({ type, gap }, 1)).toBeCloseTo(least, 12);
  },
);

test('twice the thickness: hems of twice the size', () => {
  for (const type of ['closed', 'open', 'teardrop'] as const) {
    const [one, two] = [hemFold({ type, length: 10 }, 1), hemFold({ type, length: 20 }, 2)];
    expect(two.angle).toBeCloseTo(one.angle, 9);
    expect(two.insideRadius).toBeCloseTo(2 * one.insideRadius, 12);
    expect(two.leg).toBeCloseTo(2 * one.leg, 9);
    expect(leastHemLength({ type }, 2)).toBeCloseTo(2 * leastHemLength({ type }, 1), 12);
  }
});
