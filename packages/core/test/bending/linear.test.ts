import { JobError, linear, type Problem } from '@tinwright/core';
import { expect, test } from 'vitest';

const rule = linear(0.5, 1.5);

function refusal(work: () => unknown): Problem {
  try {
    work();
  } catch (error) {
    if (error instanceof JobError && error.problems[0] !== undefined) return error.problems[0];
    throw error;
  }
  throw new Error('nothing was refused');
}

test('Westermann textbook §16.8, v = 0.5 r + 1.5 t, r = t = 1: U-bracket 50 + 40 + 30 takes 116 mm', () => {
  const { deduction } = rule.terms({ thickness: 1, insideRadius: 1, angle: 90 });
  expect(deduction).toBeCloseTo(2, 12);
  expect(50 + 40 + 30 - 2 * deduction).toBeCloseTo(116, 12);
});

test('half the angle: half the deduction', () => {
  const { deduction } = rule.terms({ thickness: 1, insideRadius: 1, angle: 45 });
  expect(deduction).toBeCloseTo(1, 12);
});

test('135°, r = 3, t = 2: v = 4.5 × 1.5, legs to the outer tangent', () => {
  const { deduction, setback, allowance } = rule.terms({ thickness: 2, insideRadius: 3, angle: 135 });
  expect(deduction).toBeCloseTo(6.75, 12);
  expect(setback).toBe(5);
  expect(allowance).toBeCloseTo(3.25, 12);
});

// by hand: v = (0.25 + 1.5) × 170/90 = 3.3056, both setbacks 2 × 1.5 = 3
test('170°, r = 0.5, t = 1: v 3.3056 mm is more than both setbacks of 3 mm, refused', () => {
  const problem = refusal(() => rule.terms({ thickness: 1, insideRadius: 0.5, angle: 170 }));
  expect(problem.code).toBe('linear-range');
  expect(problem.message).toContain('v = 3.31 mm at 170°');
  expect(problem.message).toContain('3 mm');
  expect(problem.fix).not.toBe('');
});

test('constants that leave no metal at 90°: refused', () => {
  // v = 2 R + 3 T = 5, both setbacks 4
  expect(refusal(() => linear(2, 3).terms({ thickness: 1, insideRadius: 1, angle: 90 })).code).toBe(
    'linear-range',
  );
  // v = 2 R + 2 T: nothing is left between the tangent lines
  expect(refusal(() => linear(2, 2).terms({ thickness: 1, insideRadius: 1, angle: 90 })).code).toBe(
    'linear-range',
  );
});

test('a fold of 180°: no linear deduction, the hem figure and its own source', () => {
  // trade figure 0.43 T for a closed hem, from memory; v × 2 would be 3 T
  const closed = rule.terms({ thickness: 1, insideRadius: 0, angle: 180 });
  expect(closed.deduction).toBeCloseTo(0.43, 2);
  expect(closed.source).toBe('hem figures: common practice, no source');
});

test('no constants at all: no deduction', () => {
  const { deduction, allowance, setback } = linear(0, 0).terms({ thickness: 1, insideRadius: 2, angle: 60 });
  expect(deduction).toBeCloseTo(0, 12);
  expect(allowance).toBeCloseTo(2 * setback, 12);
});
