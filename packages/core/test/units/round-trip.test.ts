import { parseLength, type Unit } from '@tinwright/core';
import { plainNumber, sayIn } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const unit = fc.constantFrom<Unit>('mm', 'in');
const length = fc.double({ min: 0, max: 5000, noNaN: true });

function mm(text: string, of: Unit): number {
  const parsed = parseLength(text, of);
  if (!parsed.ok) throw new Error(parsed.why);
  return parsed.mm;
}

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
      const text = sayIn(printed).size(value);
      expect(Math.abs(mm(text, jobUnit) - value)).toBeLessThanOrEqual(half * (1 + 1e-5));
    }),
  );
});

test.each([1e14, 1e15, 1e30, 1.5e200, 1e308])(
  '%d mm, which no job takes, is said as it was given',
  (value) => {
    for (const say of [sayIn('mm').size, sayIn('mm').most, sayIn('mm').least])
      expect(Number(say(value).replace(' mm', ''))).toBe(value);
  },
);

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
