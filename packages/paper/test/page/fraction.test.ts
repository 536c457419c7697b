import { parseLength, type Unit } from '@tinwright/core';
import { formatFraction } from '@tinwright/paper/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const DENOMINATORS = [1, 2, 4, 8, 16, 32, 64, 128] as const;
const denominator = fc.constantFrom(...DENOMINATORS);
const unit = fc.constantFrom<Unit>('mm', 'in');
const length = fc.double({ min: 0, max: 5000, noNaN: true });

function mm(text: string, of: Unit): number {
  const parsed = parseLength(text, of);
  if (!parsed.ok) throw new Error(parsed.why);
  return parsed.mm;
}

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

test('a whole number of steps: printed exactly and read back as the same length', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 20_000 }), denominator, unit, (steps, d, jobUnit) => {
      const value = (steps * 25.4) / d;
      const { text, error } = formatFraction(value, d);
      expect(error).toBe(0);
      expect(text).not.toContain('~');
      expect(mm(text, jobUnit)).toBeCloseTo(value, 8);
    }),
  );
});

test('any length as a fraction: what is read back is the length plus the stated error', () => {
  fc.assert(
    fc.property(length, denominator, (value, d) => {
      const { text, error } = formatFraction(value, d);
      expect(mm(text.replace('~', ''), 'mm')).toBeCloseTo(value + error, 8);
      expect(Math.abs(error)).toBeLessThanOrEqual(25.4 / d / 2 + 1e-9);
      expect(text.startsWith('~')).toBe(error !== 0);
    }),
  );
});

test('any fraction: in lowest terms, its bottom within the denominator asked for', () => {
  fc.assert(
    fc.property(length, denominator, (value, d) => {
      const [, top, bottom] = /(\d+)\/(\d+)/.exec(formatFraction(value, d).text) ?? [];
      if (top === undefined) return;
      expect(Number(top) % 2).toBe(1);
      expect(Number(top)).toBeLessThan(Number(bottom));
      expect(d % Number(bottom)).toBe(0);
    }),
  );
});

test('a length and its negative: same text but for the sign, opposite errors', () => {
  fc.assert(
    fc.property(length, denominator, (value, d) => {
      const [plus, minus] = [formatFraction(value, d), formatFraction(-value, d)];
      expect(minus.text.replace('-', '')).toBe(plus.text);
      expect(minus.error + plus.error).toBeCloseTo(0, 12);
    }),
  );
});
