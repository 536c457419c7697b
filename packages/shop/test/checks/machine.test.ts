// Tables that rules use: gauges and cut edges.
import { describe, expect, test } from 'vitest';
import { cutDeviation, ISO_9013 } from '../../src/checks/iso-9013.js';
import { gaugesLess } from '../../src/machines/gauges.js';

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

// ISO 9013 limit deviations, ± mm, read on modulusmetal.com; rows over 6.3 mm, and class 2 over 3.15 mm, from memory
describe('ISO 9013', () => {
  const PRINTED = [
    [1, 1, [0.075, 0.1, 0.1, 0.2, 0.2, 0.3, 0.4, 0.65]],
    [1, 3.15, [0.1, 0.15, 0.2, 0.25, 0.25, 0.35, 0.4, 0.65]],
    [1, 6.3, [0.2, 0.2, 0.25, 0.25, 0.3, 0.4, 0.45, null]],
    [1, 10, [null, 0.5, 0.6, 0.6, 0.7, 0.7, 0.7, 0.8]],
    [1, 50, [null, 0.6, 0.7, 0.7, 0.8, 1, 1.6, 2.5]],
    [2, 1, [0.5, 0.6, 0.6, 0.7, 0.7, 0.8, 0.9, 0.9]],
    [2, 3.15, [0.6, 0.6, 0.7, 0.7, 0.8, 0.9, 1, 1.1]],
    [2, 6.3, [0.7, 0.8, 0.9, 0.9, 1.1, 1.2, 1.3, 1.3]],
    [2, 10, [null, 1, 1.1, 1.3, 1.4, 1.5, 1.6, 1.7]],
    [2, 50, [null, 1.8, 1.8, 1.8, 1.9, 2.3, 3, 4.2]],
  ] as const;
  // from 0, 3, 10 … on, to just under 3, 10, 35 …
  const LOWER = [0.1, 3, 10, 35, 125, 315, 1000, 2000];
  const UPPER = [3, 10, 35, 125, 315, 1000, 2000, 4000];

  test.each(PRINTED)(
    'class %d up to %d mm: every band from its lower end to under its upper',
    (of, upTo, printed) => {
      printed.forEach((deviation, i) => {
        const [from, to] = [LOWER[i] as number, UPPER[i] as number];
        for (const size of [from, (from + to) / 2, to - 0.001])
          expect(cutDeviation(of, size, upTo)?.value ?? null).toBe(deviation);
      });
    },
  );

  test('thicker sheet of one class never comes out closer', () => {
    for (const rows of [ISO_9013[1], ISO_9013[2]])
      for (let band = 0; band < UPPER.length; band++) {
        const down = rows.flatMap((r) => r.deviations[band] ?? []);
        expect(down).toEqual(down.toSorted((a, b) => a - b));
      }
  });

  test('all rows that are typed, and nothing past them; a row from memory says so', () => {
    expect(ISO_9013[1].length + ISO_9013[2].length).toBe(PRINTED.length);
    expect(cutDeviation(1, 4000, 1)).toBeNull();
    expect(cutDeviation(2, 2, 8)).toBeNull();
    expect(cutDeviation(1, 100, 51)).toBeNull();
    expect(cutDeviation(2, 100, 4)?.basis).toBe('memory');
    expect(cutDeviation(2, 100, 2)?.basis).toBe('second-hand');
  });
});
