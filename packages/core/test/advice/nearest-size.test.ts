import { nearestSize, passing, sizeAdvice, stepOf, valueAt, wordAdvice } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const MM = { step: 0.01 };

test('the size found is the last step of the unit that works, upwards and downwards', () => {
  const at = (limit: number) => passing((v) => v >= limit);
  expect(nearestSize(5, at(7.123), MM)).toEqual({ found: 7.13, bound: 'least' });
  expect(nearestSize(5, at(7.12), MM)).toEqual({ found: 7.12, bound: 'least' });
  expect(
    nearestSize(
      5,
      passing((v) => v <= 3.339),
      MM,
    ),
  ).toEqual({ found: 3.33, bound: 'most' });
  expect(nearestSize(0, at(0.5), MM)).toEqual({ found: 0.5, bound: 'least' });
  // a thousandth of an inch
  expect(nearestSize(5, at(7.62), { step: stepOf('in') })).toEqual({ found: 7.62, bound: 'least' });
});

test('random limits and random rooms: what is found was tried, and the step before it fails', () => {
  const limits = fc.record({
    given: fc.double({ min: 1, max: 900, noNaN: true }),
    by: fc.double({ min: 0.02, max: 300, noNaN: true }),
    bend: fc.double({ min: 0.3, max: 3, noNaN: true }),
    step: fc.constantFrom(0.01, 0.0254, 0.1),
    told: fc.boolean(),
  });
  fc.assert(
    fc.property(limits, ({ given, by, bend, step, told }) => {
      const limit = given + by;
      // room that grows by a power: the slope misleads, the answer does not
      const room = (v: number) => Math.sign(v - limit) * Math.abs(v - limit) ** bend;
      const tried: number[] = [];
      const near = nearestSize(
        given,
        (v) => {
          tried.push(v);
          return told ? room(v) : room(v) >= 0 ? 0 : null;
        },
        { step },
      );
      expect(near?.bound).toBe('least');
      const found = near?.found as number;
      expect(tried).toContain(found);
      expect(room(found)).toBeGreaterThanOrEqual(0);
      expect(room(found - step * 1.001)).toBeLessThan(1e-9);
    }),
  );
});

test('where room grows evenly few trials lead there, and none where it shrinks', () => {
  let trials = 0;
  const near = nearestSize(
    20,
    (v) => {
      trials += 1;
      return v - 31.4;
    },
    MM,
  );
  expect(near).toEqual({ found: 31.4, bound: 'least' });
  expect(trials).toBeLessThan(8);
});

test('nothing is found where nothing works, or only beyond the budget', () => {
  expect(nearestSize(5, () => null, MM)).toBeNull();
  const far = passing((v: number) => v >= 30);
  expect(nearestSize(5, far, { ...MM, most: 20 })).toBeNull();
  expect(nearestSize(5, far, { ...MM, rungs: 3 })).toBeNull();
  expect(nearestSize(5, far, MM)?.found).toBe(30);
});

test('advice on parameters: sizes with the least change first, words of a list', () => {
  const params = { legs: [10, 40], hem: { length: 6, type: 'closed' } };
  const sum = (p: unknown) => (valueAt(p, ['legs', 0]) as number) + (valueAt(p, ['legs', 1]) as number);
  expect(
    sizeAdvice(
      params,
      (p) => sum(p) - 52,
      () => MM,
    ),
  ).toEqual([
    { path: ['legs', 1], given: 40, found: 42, bound: 'least' },
    { path: ['legs', 0], given: 10, found: 12, bound: 'least' },
  ]);
  const open = (p: unknown) => (valueAt(p, ['hem', 'type']) === 'open' ? 0 : -1);
  expect(wordAdvice(params, open, () => ['closed', 'open', 'none'])).toEqual([
    { path: ['hem', 'type'], given: 'closed', words: ['open'] },
  ]);
});
