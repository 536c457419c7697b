import { MATERIALS, type Material, type Unit, verifyFlat } from '@tinwright/core';
import { stripSample } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';

const sample = (thickness: number, insideRadius: number, material = 'mild-steel', units: Unit = 'mm') =>
  stripSample(MATERIALS.find((m) => m.name === material) as Material, { thickness, insideRadius }, 3, units);

describe('a strip to bend', () => {
  // 1 mm: 100 between the lines, 10 more at either end, whatever the K of the material
  test.each(MATERIALS.map((m: Material) => m.name))(
    '%s of 1 mm: 120 x 50, its bend in the middle',
    (name) => {
      const { plan, flat, width, between } = sample(1, 1, name);
      expect([flat, width, between]).toEqual([120, 50, 100]);
      expect(plan.flat.blank.max.map((v) => Math.round(v * 1e6) / 1e6)).toEqual([120, 50]);
      expect(plan.flat.bends.map((b) => b.line.map((p) => Math.round(p[0] * 1e6) / 1e6))).toEqual([[60, 60]]);
      expect(verifyFlat(plan.flat)).toEqual([]);
      expect(plan.quantity).toBe(3);
    },
  );

  // R 40, T 2: setback 42, and 20 beyond it, to the ten: 70 to either line
  test('a large radius takes longer legs', () => {
    const { flat, between } = sample(2, 40);
    expect([flat, between]).toEqual([160, 140]);
  });

  test('in inches: 5 x 2, lines 4 apart', () => {
    const { plan, flat, width, between } = sample(1, 1, 'mild-steel', 'in');
    for (const [mm, inches] of [
      [flat, 5],
      [width, 2],
      [between, 4],
      [plan.flat.blank.max[0], 5],
      [plan.flat.blank.max[1], 2],
    ] as const)
      expect(mm).toBeCloseTo(inches * 25.4, 9);
    // R 40, T 2: setback 42 and 20 beyond it are 2.44 in: 2.5 to either line
    const large = sample(2, 40, 'mild-steel', 'in');
    expect(large.between).toBeCloseTo(5 * 25.4, 9);
    expect(large.flat).toBeCloseTo(6 * 25.4, 9);
    // 7 x 25.4, without the last digits of a sum: files give it as it is
    expect(sample(2, 60, 'mild-steel', 'in').between).toBe(177.8);
  });

  test('even the thickest sheet is eight times as wide as it is thick', () => {
    const { width } = sample(6, 6);
    expect(width).toBeGreaterThanOrEqual(8 * 6);
  });

  test.each([
    [0.1, 0, 'mm'],
    [6, 100, 'mm'],
    [6, 100, 'in'],
  ] as const)('T %d, R %d, %s: the lines stand on flat metal', (thickness, radius, units) => {
    const { plan, flat, between } = sample(thickness, radius, 'mild-steel', units);
    const [bend] = plan.flat.bends;
    const zone = (bend?.tangents ?? []).flat().map((p) => p[0]);
    expect(Math.min(...zone)).toBeGreaterThan((flat - between) / 2 + 5);
  });
});
