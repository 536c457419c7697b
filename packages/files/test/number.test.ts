import { coordinate } from '@tinwright/files/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bulgeValue } from '../src/number.js';

test('any coordinate up to a kilometre prints plainly and moves by half a millionth at most', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (v) => {
      const written = String(coordinate(v));
      expect(written).toMatch(/^(?!-0$)-?\d+(\.\d{1,6})?$/);
      expect(Math.abs(Number(written) - v)).toBeLessThanOrEqual(5.001e-7);
    }),
  );
});

test('small coordinates print plainly too', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e-4, max: 1e-4, noNaN: true }), (v) => {
      expect(String(coordinate(v))).toMatch(/^(?!-0$)-?\d+(\.\d{1,6})?$/);
    }),
  );
});

test.each([-0, -1e-9, 1e-9])('%d is written as a plain zero', (v) => {
  expect(coordinate(v)).toBe(0); // not minus zero
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1_000_000.1, -1e9])(
  'the coordinate %s is refused, with what is allowed',
  (v) => {
    expect(() => coordinate(v)).toThrow(RangeError);
    expect(() => coordinate(v)).toThrow(`coordinate ${v} given, a finite number up to 1000000 mm allowed`);
  },
);

test('a bulge prints plainly and keeps ten decimals', () => {
  fc.assert(
    fc.property(fc.double({ min: -1000, max: 1000, noNaN: true }), (v) => {
      const written = String(bulgeValue(v));
      expect(written).toMatch(/^-?\d+(\.\d{1,10})?$/);
      expect(Math.abs(Number(written) - v)).toBeLessThanOrEqual(Math.abs(v) < 1e-6 ? 1e-6 : 5.001e-11);
    }),
  );
});

test('the bulge of a quarter circle is its tangent of 22.5 degrees', () => {
  expect(bulgeValue(Math.SQRT2 - 1)).toBe(0.4142135624); // tan(22.5°) = √2 − 1
});
