// Tables that rules use: gauges and cut edges.
import { describe, expect, test } from 'vitest';
import { cutDeviation, ISO_9013 } from '../../src/checks/iso-9013.js';
import { gaugesLess } from '../../src/checks/machine/gauges.js';

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
