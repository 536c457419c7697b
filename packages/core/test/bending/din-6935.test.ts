import { din6935, JobError, kFactor, type Problem } from '@tinwright/core';
import { expect, test } from 'vitest';
import { dinFactor } from '../../src/bending/din-6935.js';

const terms = (r: number, s: number, angle: number) =>
  din6935.terms({ thickness: s, insideRadius: r, angle });
const v = (r: number, s: number, angle: number) => terms(r, s, angle).deduction;

function refusal(work: () => unknown): Problem {
  try {
    work();
  } catch (error) {
    if (error instanceof JobError && error.problems[0] !== undefined) return error.problems[0];
    throw error;
  }
  throw new Error('nothing was refused');
}

test('Tabellenbuch Metall, page copy, acute bend β 60°, r 6, s 5: k 0.689, or 0.7 off its diagram', () => {
  const k = dinFactor(6 / 5);
  expect(Math.floor(k * 1000) / 1000).toBe(0.689); // 0.68959, cut off after three figures
  expect(k).toBeCloseTo(0.7, 1);
});

test('Tabellenbuch Metall, same bend with the k 0.7 it goes on with: v 5.77', () => {
  const { deduction } = kFactor(0.7 / 2).terms({ thickness: 5, insideRadius: 6, angle: 120 });
  expect(deduction).toBeCloseTo(5.77, 2);
});

test('Tabellenbuch Metall, same bend, legs 16 and 21: flat length 31.2, which it rounds up to 32 mm', () => {
  const length = 16 + 21 - v(6, 5, 120);
  expect(length).toBeCloseTo(31.2, 1);
  expect(Math.ceil(length)).toBe(32);
});

test('same bend with the unrounded k (calculated): v 5.823', () => {
  expect(v(6, 5, 120)).toBeCloseTo(5.823, 3);
});

test('Tabellenbuch Metall, U-bracket 25 + 20 + 15, s 2, r 4 (values from memory): v 4.5, flat 51 mm', () => {
  expect(v(4, 2, 90)).toBeCloseTo(4.5, 1);
  expect(25 + 20 + 15 - 2 * 4.5).toBe(51);
  expect(Math.round(25 + 20 + 15 - 2 * v(4, 2, 90))).toBe(51);
  expect(25 + 20 + 15 - 2 * v(4, 2, 90)).toBeCloseTo(51.08, 2);
});

test('DIN 6935 abridgement, sheet without thickness: v changes its sign at β = 65°24\'30"', () => {
  const beta = 65 + 24 / 60 + 30 / 3600;
  let [low, high] = [100, 130];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (v(1, 1e-10, middle) > 0) low = middle;
    else high = middle;
  }
  expect(v(1, 1e-10, 100)).toBeGreaterThan(0);
  expect(v(1, 1e-10, 130)).toBeLessThan(0);
  expect(Math.abs(180 - low - beta)).toBeLessThan(0.5 / 3600);
  expect(180 - low).toBeCloseTo(180 - 360 / Math.PI, 6);
});

// K = k/2 by r/s, calculated from the standard's formula
test.each([
  [0.5, 0.2497],
  [1, 0.325],
  [1.5, 0.369],
  [2, 0.4003],
  [3, 0.4443],
  [4, 0.4755],
  [5, 0.4997],
  [5.001, 0.5],
  [20, 0.5],
])('DIN 6935 at r/s %d (calculated): K = k/2 = %d', (ratio, K) => {
  expect(dinFactor(ratio) / 2).toBeCloseTo(K, 4);
  const bend = { thickness: 2, insideRadius: 2 * ratio, angle: 90 };
  expect(din6935.terms(bend).allowance).toBeCloseTo((Math.PI / 2) * (2 * ratio + 2 * K), 3);
});

test.each([0.001, 5, 10, 14.999])('DIN 6935, bent %d°, β over 165°: v = 0', (angle) => {
  expect(v(2, 1, angle)).toBeCloseTo(0, 12);
  expect(terms(2, 1, angle).allowance).toBeCloseTo(6 * Math.tan((angle * Math.PI) / 360), 12);
});

test('DIN 6935, bent 15°, β 165°: still corrected', () => {
  expect(v(2, 1, 15)).toBeGreaterThan(0.1);
});

test.each([
  ['r 0.04, s 1', 0.04, 1],
  ['r 0.1, s 2.5', 0.1, 2.5],
  ['no radius', 0, 1],
])('DIN 6935 under r/s 0.05 (%s): refused, naming the ratio and the least radius', (_case, r, s) => {
  const problem = refusal(() => terms(r, s, 90));
  expect(problem.code).toBe('din-6935-range');
  expect(problem.path).toEqual(['insideRadius']);
  expect(problem.message).toContain(`r/s = ${r / s} given`);
  expect(problem.message).toContain('0.05');
  // to a hundredth, so that what is printed is allowed
  expect(problem.fix).toContain(`${Math.ceil(5 * s - 1e-9) / 100} mm or more`);
});

test('DIN 6935 under r/s 0.05, fold of 180° with a radius: refused as well', () => {
  expect(refusal(() => terms(0.02, 1, 180)).code).toBe('din-6935-range');
});

test('DIN 6935 at r/s 0.05 and just over: read; k is next to nothing there', () => {
  expect(() => terms(0.05, 1, 90)).not.toThrow();
  expect(dinFactor(0.05)).toBeCloseTo(0, 2);
  expect(dinFactor(0.0502)).toBeGreaterThan(0);
});

test('a closed hem by DIN 6935: outside the standard, takes 0.43 T and does not claim the standard', () => {
  // trade figure, from memory
  const hem = terms(0, 1, 180);
  expect(hem.deduction).toBeCloseTo(0.43, 2);
  expect(hem.source).toBe('hem figures: common practice, no source');
  expect(terms(1, 1, 180).source).toBe('DIN 6935');
});

test('bent by less than 15°, an opening of more than 165°: nothing is taken off, and the working says why', () => {
  const { deduction, working } = terms(2, 1, 10);
  expect(deduction).toBeCloseTo(0, 12);
  expect(working[0]).toBe('β = 170° > 165°: v = 0');
});
