// Closed forms of machines as rules use them: against gauge tables, the exact sweep, and what the planner of bends takes.
import { MATERIALS, type Material, type Point, radians } from '@tinwright/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutDeviation, ISO_9013 } from '../../src/checks/iso-9013.js';
import { gaugesLess } from '../../src/checks/machine/gauges.js';
import {
  leafThickness,
  leastHold,
  leastLeafFlange,
  longestReturn,
  marginFor,
} from '../../src/checks/machine/leaf.js';
import type { Brake } from '../../src/index.js';
import { leastFlange, marginFor as plannersMargin } from '../../src/sequence/brake-station.js';
import { contactAngle } from '../../src/sweep/contact.js';
import { rectangle } from '../../src/sweep/polygon.js';
import { leafTools } from '../../src/tools/leaf-tools.js';
import { BRAKE } from '../shops.js';

const material = (name: string) => MATERIALS.find((m) => m.name === name) as Material;

describe('gauges less', () => {
  // Manufacturers' Standard Gauge: 16 ga 0.0598 in, 18 ga 0.0478, 20 ga 0.0359, 22 ga 0.0299
  test.each([
    [0.0598 * 25.4, 2, 0.0478],
    [1.5, 2, 0.0478], // a metric sheet a hair under its gauge
    [1.5, 4, 0.0359],
    [1.6, 2, 0.0478],
    [0.0359 * 25.4, 2, 0.0299],
  ])('%d mm less %d gauges', (t, steps, inches) => {
    expect(gaugesLess(t, steps)).toBeCloseTo(inches * 25.4, 9);
  });

  test('less is less, also past the thinnest gauge', () => {
    for (const t of [0.1, 0.3, 0.32, 0.5, 1, 2, 3.4, 5]) expect(gaugesLess(t, 2)).toBeLessThan(t);
  });

  test('16 gauge two thinner carries 0.64 of the moment, four thinner 0.36', () => {
    const t = 0.0598 * 25.4;
    expect((gaugesLess(t, 2) / t) ** 2).toBeCloseTo(0.64, 2);
    expect((gaugesLess(t, 4) / t) ** 2).toBeCloseTo(0.36, 2);
  });
});

describe('a return on the leaf', () => {
  const most = (wall: number, T: number, R: number, brake: Brake, margin: number) =>
    longestReturn(brake, { wall, thickness: T, insideRadius: R, margin });

  // s = 1.5 T at R = 0.5 T: r = H + s − 2T, at most s + the upright
  test.each([10, 15, 20, 30])('square, without overbend or margin, on a wall of %d mm', (wall) => {
    expect(most(wall, 1, 0.5, { ...BRAKE, overbend: 0 }, 0)).toBeCloseTo(Math.min(wall - 0.5, 36.5), 9);
  });

  test.each([
    [15, 13.1],
    [30, 26.6],
    [20, 17.6],
  ])('3 degrees of overbend leave a wall of %d mm with %d mm', (wall, r) => {
    expect(most(wall, 1, 0.5, BRAKE, 0)).toBeCloseTo(r, 1);
  });

  test('any section, set-back and overbend: the edge of what clears in the sweep', () => {
    const brakes = fc.record({
      foot: fc.integer({ min: 40, max: 90 }),
      upright: fc.integer({ min: 20, max: 38 }),
      noseAngle: fc.integer({ min: 30, max: 60 }),
      overbend: fc.integer({ min: 0, max: 5 }),
      wall: fc.integer({ min: 12, max: 60 }),
      R: fc.constantFrom(0.2, 0.5, 1),
    });
    fc.assert(
      fc.property(brakes, ({ wall, R, overbend, ...finger }) => {
        const brake: Brake = { ...BRAKE, finger: { ...finger, noseRadius: 0.5 }, overbend };
        const tools = leafTools(brake, 1, R, 0);
        const turn = radians(90 + overbend);
        const clears = (r: number) => {
          const lip: readonly Point[] = rectangle(wall - 1, 0, wall, r);
          return tools.finger.every((f) => contactAngle(lip, f, turn) > turn);
        };
        const r = most(wall, 1, R, brake, 0);
        expect(clears(r - 0.02)).toBe(true);
        expect(clears(r + 0.02)).toBe(false);
      }),
    );
  });
});

describe('flanges as the planner of bends takes them', () => {
  const bends = fc.record({
    thickness: fc.constantFrom(0.5, 0.8, 1, 1.2, 1.5),
    insideRadius: fc.constantFrom(0.2, 0.5, 1, 2, 3),
    length: fc.integer({ min: 10, max: 1000 }),
    material: fc.constantFrom(
      ...['mild-steel', 'stainless-304', 'aluminium-5052-h32', 'brass'].map(material),
    ),
  });

  test('in profile usual they are the same; the strict one never asks for less', () => {
    fc.assert(
      fc.property(bends, (bend) => {
        const { material: metal, thickness, insideRadius, length } = bend;
        const planner = leastFlange(BRAKE, { material: metal }, thickness, insideRadius, length);
        expect(leastLeafFlange(BRAKE, bend, 'usual').value).toBeCloseTo(planner, 9);
        expect(leastLeafFlange(BRAKE, bend, 'strict').value).toBeGreaterThanOrEqual(planner);
      }),
    );
  });

  test('so are the margin and the strip to hold', () => {
    for (const longest of [50, 300, 1000]) expect(marginFor(longest)).toBe(plannersMargin({ longest }));
    const bend = { thickness: 1, insideRadius: 1, length: 100, material: material('mild-steel') };
    expect(leastHold(BRAKE, bend).value).toBe(2 + 6); // set-back and 6 mm
  });

  test('at full capacity and length a flange of an inch', () => {
    const bend = { thickness: 1.5, insideRadius: 0.5, length: 1000, material: material('mild-steel') };
    expect(leastLeafFlange(BRAKE, bend, 'usual').value).toBeCloseTo(25.4, 9);
    expect(leafThickness(BRAKE, bend.material, 'usual').value).toBe(1.5);
  });
});

// ISO 9013 limit deviations, ± mm, read on modulusmetal.com
describe('ISO 9013', () => {
  const PRINTED = [
    [1, 1, [0.075, 0.1, 0.1, 0.2, 0.2, 0.3, 0.4, 0.65]],
    [1, 3.15, [0.1, 0.15, 0.2, 0.25, 0.25, 0.35, 0.4, 0.65]],
    [1, 6.3, [0.2, 0.2, 0.25, 0.25, 0.3, 0.4, 0.45]],
    [2, 1, [0.5, 0.6, 0.6, 0.7, 0.7, 0.8, 0.9, 0.9]],
    [2, 3.15, [0.6, 0.6, 0.7, 0.7, 0.8, 0.9, 1, 1.1]],
  ] as const;
  const BANDS = [3, 10, 35, 125, 315, 1000, 2000, 4000];

  test.each(PRINTED)('class %d up to %d mm', (of, upTo, printed) => {
    printed.forEach((deviation, i) => {
      const size = BANDS[i] as number;
      expect(cutDeviation(of, size, upTo)).toBe(deviation);
      expect(cutDeviation(of, size - 0.01, upTo)).toBe(deviation);
    });
  });

  test('all rows that are printed, and nothing past them', () => {
    expect(ISO_9013[1].length + ISO_9013[2].length).toBe(PRINTED.length);
    expect(cutDeviation(1, 4001, 1)).toBeNull();
    expect(cutDeviation(2, 100, 4)).toBeNull();
    expect(cutDeviation(1, 3000, 5)).toBeNull();
  });
});
