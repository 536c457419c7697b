import { leastRadiusOf, MATERIALS, type RadiusRule, timesThickness } from '@tinwright/core';
import { expect, test } from 'vitest';
import { aluminiumRadius, din6935Radius } from '../../src/stock/least-radius.js';

// DIN 6935 (1975-10), steel, mm, up to 120° across the rolling direction; read in scribd.com 74375167.
// Thickness over, up to; then tensile strength up to 390, 490, 640 N/mm².
const STEEL = [
  [0, 1, 1, 1.2, 1.6],
  [1, 1.5, 1.6, 2, 2.5],
  [1.5, 2.5, 2.5, 3, 4],
  [2.5, 3, 3, 4, 5],
  [3, 4, 5, 5, 6],
  [4, 5, 6, 8, 8],
  [5, 6, 8, 10, 10],
  [6, 7, 10, 12, 12],
  [7, 8, 12, 16, 16],
] as const;

test.each(STEEL)(
  'DIN 6935, steel over %d to %d mm: least radius %d, %d, %d mm by strength',
  (over, upTo, soft, middle, strong) => {
    for (const thickness of [over + 0.01, (over + upTo) / 2, upTo]) {
      expect(leastRadiusOf(din6935Radius(390), thickness)).toBe(soft);
      expect(leastRadiusOf(din6935Radius(490), thickness)).toBe(middle);
      expect(leastRadiusOf(din6935Radius(640), thickness)).toBe(strong);
    }
  },
);

test.each(STEEL.slice(0, -1))(
  'DIN 6935, steel over %d to %d mm bent over 120°: the next thicker row',
  (over, upTo) => {
    const next = STEEL.find(([from]) => from === upTo) as (typeof STEEL)[number];
    for (const thickness of [over + 0.01, upTo])
      for (const [tensile, radius] of [
        [390, next[2]],
        [490, next[3]],
        [640, next[4]],
      ] as const) {
        expect(leastRadiusOf(din6935Radius(tensile), thickness, 121)).toBe(radius);
        expect(leastRadiusOf(din6935Radius(tensile), thickness, 120)).toBe(
          leastRadiusOf(din6935Radius(tensile), thickness),
        );
      }
  },
);

test('DIN 6935, steel of 8 mm bent over 120°: the last ratio for a sheet 1 mm thicker', () => {
  expect(leastRadiusOf(din6935Radius(390), 8, 135)).toBeCloseTo(13.5, 12);
});

// aircraft-type minimums, inches, bjg-design.com shbend table, read; 5052-H34 by AC 43.13-1B table 4-6, from memory
test.each([
  ['stainless-304', 0.04, 0.094],
  ['stainless-304', 0.063, 0.125],
  ['stainless-304', 0.09, 0.188],
  ['aluminium-6061-t6', 0.063, 0.188],
  ['aluminium-6061-t6', 0.125, 0.5],
  ['aluminium-5052-h32', 0.064, 0.096],
  ['aluminium-5052-h32', 0.128, 0.256],
])('%s of %d in: the stricter source asks for %d in, more than the usual one', (name, thickness, radius) => {
  const material = MATERIALS.find((m) => m.name === name);
  expect(leastRadiusOf(material?.strictRadius as RadiusRule, thickness * 25.4) / 25.4).toBeCloseTo(radius, 9);
  expect(radius * 25.4).toBeGreaterThan(leastRadiusOf(material?.leastRadius as RadiusRule, thickness * 25.4));
});

test('DIN 6935, steel over 8 mm: the last row goes on in proportion, 12 mm at 8 is 15 mm at 10', () => {
  expect(leastRadiusOf(din6935Radius(390), 10)).toBeCloseTo(15, 12);
  expect(leastRadiusOf(din6935Radius(640), 10)).toBeCloseTo(20, 12);
});

test('DIN 6935, steel: thicker sheet never asks for less', () => {
  for (const tensile of [390, 490, 640] as const) {
    const radii = Array.from({ length: 120 }, (_, i) => leastRadiusOf(din6935Radius(tensile), (i + 1) / 10));
    expect(radii).toEqual(radii.toSorted((a, b) => a - b));
  }
});

// Thicknesses for 90° cold bends at 1/64, 1/32, 1/16, 1/8, 3/16 and 1/4 in: Aluminum Design Manual 2005,
// table 3-1 p. VII-78 (1100, 3003, 5052); bjg-design.com shbend table (6061)
const ALUMINIUM = [
  ['1100-H14', [0, 0, 0, 1, 1, 1.5]],
  ['3003-H14', [0, 0, 0, 1, 1, 1.5]],
  ['5052-H32', [0, 0, 1, 1.5, 1.5, 1.5]],
  ['6061-T6', [1, 1, 1.5, 2.5, 3, 3.5]],
] as const;
const STEPS = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 3 / 16, 1 / 4].map((i) => i * 25.4);

test.each(ALUMINIUM)('aluminium %s: least radius %j thicknesses, 1/64 to 1/4 in', (temper, factors) => {
  factors.forEach((factor, i) => {
    const thickness = STEPS[i] as number;
    expect(leastRadiusOf(aluminiumRadius(temper), thickness)).toBeCloseTo(factor * thickness, 12);
  });
});

test.each(ALUMINIUM)(
  'aluminium %s between two printed thicknesses: the thicker row holds',
  (temper, factors) => {
    for (let i = 1; i < STEPS.length; i++) {
      const between = ((STEPS[i - 1] as number) + (STEPS[i] as number)) / 2;
      expect(leastRadiusOf(aluminiumRadius(temper), between)).toBeCloseTo(
        (factors[i] as number) * between,
        12,
      );
    }
  },
);

test.each(ALUMINIUM)(
  'aluminium %s thinner or thicker than the table: the first and the last row',
  (temper, factors) => {
    expect(leastRadiusOf(aluminiumRadius(temper), 0.2)).toBeCloseTo(factors[0] * 0.2, 12);
    expect(leastRadiusOf(aluminiumRadius(temper), 10)).toBeCloseTo(factors[5] * 10, 12);
  },
);

test('aluminium 5052-H32 of 0.8 and 1.6 mm: taken as 1/32 and 1/16 in, which they are nearest to', () => {
  expect(leastRadiusOf(aluminiumRadius('5052-H32'), 0.8)).toBe(0);
  expect(leastRadiusOf(aluminiumRadius('5052-H32'), 1.6)).toBeCloseTo(1.6, 12);
});

test('a multiple of the thickness: half of 0.8 mm is 0.4 mm, with its source', () => {
  const rule = timesThickness(0.5, 'common practice, no source');
  expect(leastRadiusOf(rule, 0.8)).toBeCloseTo(0.4, 12);
  expect(rule.source).toBe('common practice, no source');
});

// the row of each material at 1/16 in (1.5875 mm), by hand from the tables above; stainless, copper, brass and
// tinplate by the stricter end of makers' guides, from memory
test.each([
  ['mild-steel', 2.5],
  ['galvanised-steel', 2.5],
  ['stainless-304', 1.5875],
  ['stainless-430', 1.5875],
  ['aluminium-1050-h14', 0],
  ['aluminium-3003-h14', 0],
  ['aluminium-5052-h32', 1.5875],
  ['aluminium-6061-t6', 2.38125],
  ['copper', 0.79375],
  ['brass', 1.5875],
  ['tinplate', 0.79375],
])('%s of 1/16 in: least inside radius %d mm', (name, radius) => {
  const material = MATERIALS.find((m) => m.name === name);
  expect(leastRadiusOf(material?.leastRadius as RadiusRule, 1.5875)).toBeCloseTo(radius, 9);
});

test('a radius taken from memory: its source says so', () => {
  for (const name of ['stainless-304', 'stainless-430', 'copper', 'brass', 'tinplate'])
    expect(MATERIALS.find((m) => m.name === name)?.leastRadius.source).toContain('from memory');
});

test('a radius from a table: its source names the table', () => {
  expect(din6935Radius(390).source).toContain('DIN 6935 (1975-10)');
  expect(aluminiumRadius('5052-H32').source).toContain('Aluminum Design Manual 2005 table 3-1');
  expect(aluminiumRadius('6061-T6').source).toContain('bjg-design.com');
});
