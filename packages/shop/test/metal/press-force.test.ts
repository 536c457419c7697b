import { kFactor } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { bendForce, FORCE_CONSTANTS, leastVFlange } from '../../src/metal/press-force.js';

// Groover, Fundamentals of Modern Manufacturing, bending example (from memory of the book, recomputed exactly):
// steel 3.2 thick, 44.5 wide, TS 450, bent through 60 at R 4.75 over a 25 mm V die
describe("Groover's example", () => {
  test('force 10 909 N', () => {
    const force = bendForce(FORCE_CONSTANTS.usual.value, 450, 44.5, 3.2, 25);
    expect(force * 1000).toBeCloseTo(10_909, 0);
  });

  test('allowance 6.08 at K 0.33 (R below 2 T), blank 38 + 25 + 6.08', () => {
    const { allowance } = kFactor(0.33).terms({ thickness: 3.2, insideRadius: 4.75, angle: 60 });
    expect(allowance).toBeCloseTo(6.08, 2);
    expect(38 + 25 + allowance).toBeCloseTo(69.08, 2);
  });
});

// A tool maker's printed chart of air-bending force, kN per metre; columns V inferred from the order of the row
const CHART: readonly (readonly [
  tensile: number,
  thickness: number,
  row: Readonly<Record<number, number>>,
])[] = [
  [450, 1, { 6: 110, 7: 100, 8: 80, 10: 70 }],
  [450, 2, { 12: 220, 14: 190, 16: 170, 18: 150, 20: 130, 25: 110 }],
  [450, 3, { 18: 340, 20: 300, 25: 240, 32: 190, 40: 150 }],
  [700, 2, { 12: 330, 14: 290, 16: 260, 18: 230, 20: 200, 25: 170 }],
];
const cells = CHART.flatMap(([rm, t, row]) =>
  Object.entries(row).map(([v, kN]) => [rm, t, Number(v), kN] as const),
);
const of = (constant: number, [rm, t, v]: (typeof cells)[number]) => bendForce(constant, rm, 1000, t, v);

describe('the printed chart', () => {
  // its cells are rounded to 10 kN: half a step is 7 % of the smallest
  test.each(cells)('Rm %d, T %d, V %d: %d kN/m within 8 %% by the strict constant', (...cell) => {
    const force = of(FORCE_CONSTANTS.strict.value, cell);
    expect(Math.abs(force / cell[3] - 1)).toBeLessThan(0.08);
  });

  test('the strict constant is the mean that fits it; the usual one comes out a tenth low', () => {
    const fits = cells.map((c) => c[3] / of(1, c));
    const mean = fits.reduce((a, b) => a + b, 0) / fits.length;
    expect(mean).toBeCloseTo(FORCE_CONSTANTS.strict.value, 1.5);
    expect(FORCE_CONSTANTS.usual.value / mean).toBeCloseTo(0.9, 1);
  });
});

describe('V openings', () => {
  // a machine maker's note: 90 degrees 0.71 V, 60 1.0 V of opening angle, 120 0.58, 135 0.54; opening = 180 - angle
  test.each([
    [90, 0.71],
    [60, 0.58],
    [45, 0.54],
    [120, 1],
    [135, 1.31],
  ])('bent through %d, the least flange is %d V', (angle, factor) => {
    expect(leastVFlange(10, angle) / 10).toBeCloseTo(factor, 2);
  });
});
