// Fingers for a stretch, against every choice there is.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chooseTools, difference } from '../../src/sequence/search/fingers.js';
import { stretchesFor } from '../../src/sequence/stations/stretches.js';

const INNER = 6;
const widths = fc.constantFrom(20, 25, 30, 40, 50, 75, 100);

/** Least pieces changed, then least left bare, then fewest pieces, over all choices. */
function leastOf(rack: readonly number[], on: readonly number[], least: number, most: number) {
  const all = Array.from({ length: 2 ** rack.length }, (_, bits) =>
    rack.filter((_, i) => (bits & (1 << i)) !== 0),
  );
  const sum = (p: readonly number[]) => p.reduce((a, b) => a + b, 0);
  return all
    .filter((p) => p.length > 0 && sum(p) <= most && sum(p) + (p.length - 1) * INNER >= least)
    .map((p) => [difference(on, p), most - sum(p), p.length] as const)
    .toSorted((a, b) => a[0] - b[0] || a[1] - b[1] || a[2] - b[2])[0];
}

test('no choice of fingers changes fewer pieces, leaves less bare, or takes fewer', () => {
  fc.assert(
    fc.property(
      fc.array(widths, { minLength: 1, maxLength: 8 }),
      fc.nat(255),
      fc.integer({ min: 20, max: 250 }),
      (rack, some, most) => {
        const on = rack.filter((_, i) => (some & (1 << i)) !== 0);
        const least = most - 20;
        const chosen = chooseTools([on], [{ least, most }], rack, INNER);
        const best = leastOf(rack, on, least, most);
        if (chosen === 'none') expect(best).toBeUndefined();
        else {
          const pieces = (chosen ?? []).flat();
          const bare = most - pieces.reduce((a, b) => a + b, 0);
          expect([difference(on, pieces), bare, pieces.length]).toEqual(best);
        }
      },
    ),
    { numRuns: 150, seed: 21 },
  );
});

test('narrow fingers are found behind any number of wide ones', () => {
  const rack = [...Array.from({ length: 30 }, () => 300), 20, 20, 20];
  expect(chooseTools(null, [{ least: 55, most: 65 }], rack, INNER)).toEqual([[20, 20, 20]]);
});

test('a line no longer than what may stay bare at its end is not bent with nothing over it', () => {
  const gaps = { end: 20, inner: 6 };
  expect(stretchesFor([[0, 20]], [[-5, 25]], gaps, 1000)).toEqual({ bare: [0, 20] });
  expect(stretchesFor([[0, 40]], [[-5, 20]], gaps, 1000)).toHaveProperty('stretches.length', 1);
});
