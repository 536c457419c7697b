import { MATERIALS } from '@tinwright/core';
import { planSequence, type StripRow, springbackOf } from '@tinwright/shop';
import {
  radiusRatio,
  SPRINGBACK_RATIOS,
  SPRINGBACK_TABLE,
  setAngle,
  springbackFactor,
} from '@tinwright/shop/internal';
import { describe, expect, test } from 'vitest';
import { planned, shopWith } from '../shops.js';

describe('radius under load over radius after: 4x^3 - 3x + 1', () => {
  // Kalpakjian and Schmid, springback example (from memory of the book, recomputed exactly): 0.942, 0.5 to 0.531 in
  test('steel 0.0359 in, R 0.5 in, Y 40 ksi, E 29e6', () => {
    const ratio = radiusRatio(0.5, 0.0359, 40e3, 29e6);
    expect(ratio).toBeCloseTo(0.942, 3);
    expect(0.5 / ratio).toBeCloseTo(0.531, 3);
  });

  // MIT 2.008, homework 5: "approximately 2 degrees" on 90; the copy lost the exponent of E, only 10e6 gives it
  test('aluminium 1/8 in, R 2 in, Y 5075 psi: some 2 degrees on 90', () => {
    expect(90 * (1 - radiusRatio(2, 1 / 8, 5075, 10e6))).toBeCloseTo(2, 0);
  });

  test('a metal that does not yield at all springs back wholly at x = 1/2', () => {
    expect(radiusRatio(0.5, 1, 1, 1)).toBeCloseTo(0, 12);
  });
});

// German handbook table, rows as on the copy scribd 401383818; its header, the ratios, from memory
const PRINTED: Readonly<Record<string, readonly (number | null)[]>> = {
  DC04: [0.99, 0.99, 0.99, 0.98, 0.97, 0.97, 0.96, 0.94, 0.91, 0.87, 0.83],
  DC01: [0.99, 0.99, 0.99, 0.97, 0.96, 0.96, 0.93, 0.9, 0.85, 0.77, 0.66],
  'X12CrNi18-8': [0.99, 0.98, 0.97, 0.95, 0.93, 0.89, 0.84, 0.76, 0.63, null, null],
  'E-Cu-R20': [0.98, 0.97, 0.97, 0.96, 0.95, 0.93, 0.9, 0.85, 0.79, 0.72, 0.6],
  'CuZn33-R29': [0.97, 0.97, 0.96, 0.95, 0.94, 0.93, 0.89, 0.86, 0.83, 0.77, 0.73],
  'EN AW-Al99.0': [0.99, 0.99, 0.99, 0.99, 0.98, 0.98, 0.97, 0.97, 0.96, 0.95, 0.93],
  AlCuMg1: [0.98, 0.98, 0.98, 0.98, 0.97, 0.97, 0.96, 0.95, 0.93, 0.91, 0.87],
  AlSiMgMn: [0.98, 0.98, 0.97, 0.96, 0.95, 0.93, 0.9, 0.86, 0.82, 0.76, 0.72],
};

describe('the springback table', () => {
  test('every row as printed', () => {
    expect(Object.fromEntries(SPRINGBACK_TABLE.map((r) => [r.metal, r.factors]))).toEqual(PRINTED);
    expect(SPRINGBACK_RATIOS).toEqual([1, 1.6, 2.5, 4, 6.3, 10, 16, 25, 40, 63, 100]);
  });

  test('every material has a row, and one only', () => {
    for (const { name } of MATERIALS)
      expect(SPRINGBACK_TABLE.filter((r) => r.materials.includes(name)).map((r) => r.metal)).toHaveLength(1);
  });

  // 90 degrees of DC01 at r/s 1: 90 / 0.99 = 90.9; stainless at r/s 4: 90 / 0.95 = 94.7
  test.each([
    ['mild-steel', 1, 90.9],
    ['stainless-304', 4, 94.7],
  ])('%s at R = %d T is set to %d for 90', (material, ratio, set) => {
    expect(setAngle(90, springbackFactor(material, ratio).factor)).toBeCloseTo(set, 1);
  });

  test('between two columns it lies between their factors, outside it is the last one known', () => {
    const at = (ratio: number) => springbackFactor('stainless-304', ratio).factor;
    expect(at(Math.sqrt(4 * 6.3))).toBeCloseTo((0.95 + 0.93) / 2, 12); // half way in the logarithm
    expect([at(0), at(0.5), at(500)]).toEqual([0.99, 0.99, 0.63]);
  });
});

const ROW: StripRow = {
  name: 'lot 7',
  material: 'mild-steel',
  thickness: 1,
  insideRadius: 1,
  k: 0.4,
  kError: 0.01,
  springback: 3,
  springbackError: 0.2,
  strips: 3,
};

describe('strips of the shop come before the table', () => {
  test('90 degrees that opened by 3 were set to 93', () => {
    const { factor, source } = springbackOf([ROW], 'mild-steel', 1)(1);
    expect(setAngle(90, factor)).toBeCloseTo(93, 12);
    expect(source).toContain('lot 7');
  });

  test.each([
    ['another radius', [ROW], 1, 2],
    ['another thickness', [ROW], 1.2, 1],
    ['springback not measured', [{ ...ROW, springback: null }], 1, 1],
    ['no strips', [], 1, 1],
  ] as const)('%s: the table', (_, strips, thickness, radius) => {
    expect(springbackOf(strips, 'mild-steel', thickness)(radius)).toEqual(
      springbackFactor('mild-steel', radius / thickness),
    );
  });

  test('the planner sets the leaf by the strip', () => {
    const part = planned({ family: 'bent-strip', width: 60, legs: [60, 60], angles: [90] });
    const set = (strips: readonly StripRow[]) =>
      planSequence(part, { ...shopWith(), strips }).steps.map((s) => s.setAngle);
    expect(set([])).toEqual([91]); // 90.9 to the half degree a stop is set to
    expect(set([ROW])).toEqual([93]);
  });
});
