import { describe, expect, test } from 'vitest';
import { formatApart, formatFraction, formatLength, plainNumber } from '../../src/units/format.js';

const inches = (n: number) => n * 25.4;

// 3 23/32 in = 3.71875 in, rounded by hand to each denominator
test.each([
  [1, '~4 in', 9 / 32],
  [2, '~3 1/2 in', -7 / 32],
  [4, '~3 3/4 in', 1 / 32],
  [8, '~3 3/4 in', 1 / 32],
  [16, '~3 3/4 in', 1 / 32],
  [32, '3 23/32 in', 0],
  [64, '3 23/32 in', 0],
  [128, '3 23/32 in', 0],
])('3 23/32 in to the nearest 1/%d: %s, error %d in', (denominator, text, error) => {
  const printed = formatFraction(inches(3 + 23 / 32), denominator);
  expect(printed.text).toBe(text);
  expect(printed.error).toBeCloseTo(inches(error), 9);
});

test.each([1, 2, 4, 8, 16, 32, 64, 128])(
  'one step of 1/%d: printed in lowest terms, exact',
  (denominator) => {
    const { text, error } = formatFraction(inches(1 / denominator), denominator);
    expect(text).toBe(denominator === 1 ? '1 in' : `1/${denominator} in`);
    expect(error).toBe(0);
  },
);

test.each([
  [8, '~16 in'],
  [4, '~16 in'],
  [1, '~16 in'],
])('15 31/32 in to the nearest 1/%d: carries to 16 in, 1/32 in too long', (denominator, text) => {
  const printed = formatFraction(inches(15 + 31 / 32), denominator);
  expect(printed.text).toBe(text);
  expect(printed.error).toBeCloseTo(25.4 / 32, 9);
});

test('63/64 in to the nearest 1/16: carries to 1 in, not to 16/16', () => {
  expect(formatFraction(inches(63 / 64), 16).text).toBe('~1 in');
});

test('15 31/32 in to the nearest 1/32: stays as it is', () => {
  expect(formatFraction(inches(15 + 31 / 32), 32)).toEqual({ text: '15 31/32 in', error: 0 });
});

test.each([
  [-15.5, 8, '-15 1/2 in', 0],
  [-0.75, 4, '-3/4 in', 0],
  [-(15 + 31 / 32), 4, '~-16 in', -1 / 32],
])('the negative %d in to 1/%d: %s, error %d in', (value, denominator, text, error) => {
  const printed = formatFraction(inches(value), denominator);
  expect(printed.text).toBe(text);
  expect(printed.error).toBeCloseTo(inches(error), 9);
});

test('a little under zero rounded to zero: no minus sign, the error is stated', () => {
  expect(formatFraction(-0.1, 8)).toEqual({ text: '~0 in', error: 0.1 });
});

test('zero: 0 in, exact, also for minus zero', () => {
  expect(formatFraction(0, 64)).toEqual({ text: '0 in', error: 0 });
  expect(formatFraction(-0, 1)).toEqual({ text: '0 in', error: 0 });
});

test('100 mm to 1/16: 3 15/16 in, 0.0125 mm too long', () => {
  // by hand: 63/16 × 25.4 = 100.0125
  const { text, error } = formatFraction(100, 16);
  expect(text).toBe('~3 15/16 in');
  expect(error).toBeCloseTo(0.0125, 9);
});

test.each([0, -8, 3, 10, 12, 256, 0.5, Number.NaN])(
  'the denominator %d: refused with what is allowed',
  (d) => {
    expect(() => formatFraction(10, d)).toThrow(RangeError);
    expect(() => formatFraction(10, d)).toThrow('a power of two from 1 to 128');
  },
);

test.each([
  [12.5, 2, '12.5'],
  [12, 2, '12'],
  [100, 0, '100'],
  [100, 3, '100'],
  [0.126, 2, '0.13'],
  [-0.126, 2, '-0.13'],
  [-0.001, 2, '0'],
  [-0.4, 0, '0'],
  [-0, 3, '0'],
  [1e-7, 4, '0'],
  [0.00002, 5, '0.00002'],
  [1234567.5, 1, '1234567.5'],
])('the number %d with at most %d decimals: %s', (value, digits, text) => {
  expect(plainNumber(value, digits)).toBe(text);
});

test('a length in millimetres: two decimals at most', () => {
  expect(formatLength(12.5, 'mm')).toBe('12.5 mm');
  expect(formatLength(323.426, 'mm')).toBe('323.43 mm');
});

test('a length in inches: three decimals at most', () => {
  expect(formatLength(12.5, 'in')).toBe('0.492 in');
  expect(formatLength(393.7, 'in')).toBe('15.5 in');
  expect(formatLength(-25.4, 'in')).toBe('-1 in');
});

describe('a length told apart from others', () => {
  test.each([
    ['nothing near: as always', 12.5, ['10 mm'], 'mm', '12.5 mm'],
    ['a hair over', 10_000.001, ['1 mm', '10000 mm'], 'mm', '10000.001 mm'],
    ['a hair under', 0.0999, ['0.1 mm'], 'mm', '0.0999 mm'],
    ['in inches', 25.4 / 16, ['0.063 in'], 'in', '0.0625 in'],
    ['a hair over in inches', 5.9945, ['0.236 in'], 'in', '0.236004 in'],
    ['next to nothing', 0.000_01, [], 'mm', '0.00001 mm'],
    ['less than decimals can show', 1e-20, [], 'mm', '1e-20 mm'],
    ['nothing itself', 0, ['1 mm'], 'mm', '0 mm'],
  ] as const)('%s', (_, mm, others, unit, text) => {
    expect(formatApart(mm, others, unit)).toBe(text);
  });
});
