// Shortest tours through ways to lie, against every order of them.
import { DEFAULT_COSTS } from '@tinwright/shop';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Bearing, tourBook } from '../../src/sequence/search/tours.js';
import { turnCost } from '../../src/sequence/search/turns.js';

const bearing = fc.record({
  faceUp: fc.constantFrom('marked' as const, 'unmarked' as const),
  heading: fc.constantFrom(0, 90, 180, 270, 36, 144),
});
const bearings = fc.uniqueArray(bearing, {
  minLength: 1,
  maxLength: 5,
  selector: (b) => `${b.faceUp} ${b.heading}`,
});

const between = (a: Bearing, b: Bearing): number =>
  turnCost(a.heading, b.heading, DEFAULT_COSTS) + (a.faceUp === b.faceUp ? 0 : DEFAULT_COSTS.flip);

function shortest(from: Bearing | null, left: readonly Bearing[]): number {
  if (left.length === 0) return 0;
  return Math.min(
    ...left.map((next, i) => {
      const rest = left.filter((_, k) => k !== i);
      return (from === null ? 0 : between(from, next)) + shortest(next, rest);
    }),
  );
}

test('no order of the lies of a tour takes less, from anywhere and from each of them; the shortest come first', () => {
  fc.assert(
    fc.property(bearings, (lies) => {
      const tours = tourBook(lies, DEFAULT_COSTS, 1);
      for (const from of [-1, ...lies.keys()]) {
        const list = tours(from);
        expect(list).toHaveLength(2 ** lies.length - 1);
        expect(list.map((t) => t.seconds)).toEqual(list.map((t) => t.seconds).toSorted((a, b) => a - b));
        for (const { lies: bits, seconds, turning } of list) {
          const chosen = lies.filter((_, i) => (bits & (1 << i)) !== 0);
          expect(seconds).toBeCloseTo(shortest(lies[from] ?? null, chosen), 9);
          expect(turning).toBeLessThanOrEqual(seconds + 1e-9);
        }
      }
    }),
    { numRuns: 30 },
  );
});
