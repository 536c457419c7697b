import fc from 'fast-check';
import { expect, test } from 'vitest';
import { spread } from '../../src/figure/spread.js';

const wanted = fc
  .array(fc.double({ min: 0, max: 200, noNaN: true }), { minLength: 1, maxLength: 30 })
  .map((list) => list.toSorted((a, b) => a - b));
const cost = (places: readonly number[], at: readonly number[]) =>
  places.reduce((sum, p, i) => sum + (p - (at[i] as number)) ** 2, 0);

test('places that have room stay where they are wanted', () => {
  expect(spread([0, 10, 20], 3.5, 0)).toEqual([0, 10, 20]);
});

test('two that crowd each other move apart by the same', () => {
  const [a, b] = spread([50, 50], 3.5, 0) as [number, number];
  expect([a, b]).toEqual([48.25, 51.75]);
});

test('the first does not go below the least', () => {
  expect(spread([0, 0, 0], 3, 0)).toEqual([0, 3, 6]);
});

test('neighbours are a pitch apart or more, in order', () => {
  fc.assert(
    fc.property(wanted, (list) => {
      const places = spread(list, 3.6, 0);
      expect(places).toHaveLength(list.length);
      expect(places[0]).toBeGreaterThanOrEqual(0);
      places.slice(1).forEach((p, i) => {
        expect(p - (places[i] as number)).toBeGreaterThan(3.6 - 1e-9);
      });
    }),
  );
});

test('no small change of the places that keeps the pitch comes nearer to those wanted', () => {
  const free = wanted.map((list) => list.map((v) => v + 200)); // far from the least place
  fc.assert(
    fc.property(
      free,
      fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 30, maxLength: 30 }),
      (list, moves) => {
        const places = spread(list, 3.6, 0);
        const moved = places.map((p, i) => p + 0.01 * (moves[i] as number));
        const allowed = moved.slice(1).every((p, i) => p - (moved[i] as number) >= 3.6);
        if (allowed) expect(cost(moved, list)).toBeGreaterThan(cost(places, list) - 1e-9);
      },
    ),
  );
});
