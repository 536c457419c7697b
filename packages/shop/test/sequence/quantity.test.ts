// One piece, or two dozen: what is set is shared among the pieces, and so is the way to a machine; turning is not.
import { type BendStep, DEFAULT_SHOP, planSequence } from '@tinwright/shop';
import { expect, test } from 'vitest';
import { planned } from '../shops.js';

const order = (quantity: number) =>
  planSequence(
    planned({
      family: 'bent-strip',
      width: 80,
      legs: [160, 30, 120, 120],
      angles: [20, -20, 20],
      quantity,
    }),
    DEFAULT_SHOP,
  );
const walks = (steps: readonly BendStep[]) =>
  steps.filter((s, i) => i > 0 && s.machine !== steps[i - 1]?.machine).length;
const turns = (steps: readonly BendStep[]) => steps.filter((s) => s.handling.round !== null).length;

test('one piece is turned once more rather than carried to the bench and back; 24 are carried, and none is turned', () => {
  const [one, many] = [order(1).steps, order(24).steps];
  expect({ walks: walks(one), turns: turns(one) }).toEqual({ walks: 1, turns: 1 });
  expect({ walks: walks(many), turns: turns(many) }).toEqual({ walks: 2, turns: 0 });
});

test('the more pieces, the less each takes', () => {
  const seconds = [1, 2, 5, 24].map((n) => order(n).seconds);
  expect(seconds).toEqual(seconds.toSorted((a, b) => b - a));
  expect(order(24).status).toBe('optimal');
});
