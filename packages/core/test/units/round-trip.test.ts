import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatFraction, formatLength, plainNumber } from '../../src/units/format.js';
import { parseLength, type Unit } from '../../src/units/length.js';

const DENOMINATORS = [1, 2, 4, 8, 16, 32, 64, 128] as const;
const denominator = fc.constantFrom(...DENOMINATORS);
const unit = fc.constantFrom<Unit>('mm', 'in');
const length = fc.double({ min: 0, max: 5000, noNaN: true });

function mm(text: string, of: Unit): number {
  const parsed = parseLength(text, of);
  if (!parsed.ok) throw new Error(parsed.why);
  return parsed.mm;
}

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

test('a plain number: read back within half its last decimal', () => {
  fc.assert(
    fc.property(length, fc.integer({ min: 0, max: 9 }), (value, digits) => {
      const text = plainNumber(value, digits);
      expect(text).toMatch(/^\d+(\.\d*[1-9])?$/);
      expect(Math.abs(mm(text, 'mm') - value)).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-9);
    }),
  );
});

test('a printed length: read back within half its last decimal, whatever the job unit', () => {
  fc.assert(
    fc.property(length, unit, unit, (value, printed, jobUnit) => {
      const half = printed === 'mm' ? 0.005 : 0.0005 * 25.4;
      expect(Math.abs(mm(formatLength(value, printed), jobUnit) - value)).toBeLessThanOrEqual(half + 1e-9);
    }),
  );
});

test('any text of up to 40 characters: a finite length that is not negative, or a reason', () => {
  const characters = [...' 0123456789./-½"\'mcinft'];
  const text = fc.string({ unit: fc.constantFrom(...characters), maxLength: 40 });
  fc.assert(
    fc.property(fc.oneof(text, fc.string({ maxLength: 60 })), unit, (value, jobUnit) => {
      const parsed = parseLength(value, jobUnit);
      if (parsed.ok) expect(parsed.mm >= 0 && Number.isFinite(parsed.mm)).toBe(true);
      else expect(parsed.why.length).toBeGreaterThan(10);
    }),
    { numRuns: 500 },
  );
});
