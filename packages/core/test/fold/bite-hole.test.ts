import { JobError } from '@tinwright/core';
import { corner, loopArea } from '@tinwright/core/internal';
import { expect, test } from 'vitest';
import { biteHole } from '../../src/fold/bite-hole.js';

const strip = [corner(0, 0), corner(60, 0), corner(60, 10), corner(0, 10)];

test('a hole at a corner takes a quarter of a circle', () => {
  const bitten = biteHole(strip, { centre: [60, 10], radius: 4 });
  expect(loopArea(bitten)).toBeCloseTo(600 - (Math.PI * 16) / 4, 9);
});

test('a hole that would cut the outline in two is refused, in the unit of who asks', () => {
  try {
    biteHole(strip, { centre: [30, 5], radius: 10.16 });
    expect.unreachable();
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    expect(error.problems).toMatchObject([{ code: 'relief-too-large', path: ['relief'] }]);
    expect(error.message).toContain('a relief hole of 20.32 mm is too large');
    expect(new JobError(error.refusals, 'in').message).toContain('a relief hole of 0.8 in is too large');
  }
});

test('a hole that swallows the outline or misses it is refused', () => {
  for (const circle of [
    { centre: [30, 5], radius: 100 },
    { centre: [30, 200], radius: 4 },
  ] as const)
    expect(() => biteHole(strip, circle)).toThrow('is too large');
});
