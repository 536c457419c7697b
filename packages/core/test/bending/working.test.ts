import type { BendInput, BendTerms } from '@tinwright/core';
import { din6935, handbook, kFactor, linear } from '@tinwright/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foldedFlat } from '../../src/bending/folded-flat.js';
import { workingLine, workingNumber } from '../../src/bending/working.js';

test('a number in a line of working: four decimals at most, no trailing zeros', () => {
  expect([1.23456, 2, 0.1 + 0.2, -0.00001].map(workingNumber)).toEqual(['1.2346', '2', '0.3', '0']);
});

test('numbers are printed finer where the result would not follow from four decimals', () => {
  const line = (setback: number, allowance: number) =>
    workingLine('BD = 2 × # − #', [setback, allowance], (s, b) => 2 * s - b);
  // tan(22.5°) × 2 = 0.828427, π/4 × 1.42 = 1.115265: 2 × 0.8284 − 1.1153 = 0.5415, but 0.541589 is meant
  const [a, b] = [2 * Math.tan(Math.PI / 8), (Math.PI / 4) * 1.42];
  expect(line(a, b)).toBe('BD = 2 × 0.82843 − 1.11527 = 0.5416');
  expect(line(2, 2.2305)).toBe('BD = 2 × 2 − 2.2305 = 1.7695');
});

/** What a printed formula comes to, for somebody with a pocket calculator. */
function computed(text: string): number {
  const code = text
    .replace(/tan\(([\d.]+)°\/2\)/g, (_, a) => `Math.tan(Math.PI * ${a} / 360)`)
    .replace('log10', 'Math.log10')
    .replaceAll('π', 'Math.PI')
    .replaceAll('×', '*')
    .replaceAll('−', '-')
    .replaceAll('°', '');
  return new Function(`return ${code}`)() as number;
}

const terms: readonly (readonly [string, (bend: BendInput, k: number) => BendTerms])[] = [
  ['k-factor', (b, k) => kFactor(k).terms(b)],
  ['din-6935', (b) => din6935.terms(b)],
  ['handbook', (b) => handbook('medium').terms(b)],
  ['linear', (b, k) => linear(k / 2, k).terms(b)],
  ['folded flat', (b) => foldedFlat({ ...b, angle: 180 })],
];
const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe.each(terms)('%s', (_, of) => {
  test('every printed result follows from the numbers printed before it, in millimetres and in inches', () => {
    let lines = 0;
    fc.assert(
      fc.property(
        size(0.3, 6),
        size(0.5, 12),
        size(15, 179),
        size(0.2, 0.6),
        fc.constantFrom(1, 25.4),
        (T, R, angle, k, per) => {
          for (const line of of({ thickness: T / per, insideRadius: R / per, angle }, k).working) {
            const [, formula, result] = /^.* = (.*) = ([\d.-]+)$/.exec(line) ?? [];
            if (formula === undefined || formula.includes('outer tangent')) continue;
            lines += 1;
            // half the last of four decimals, and a hair where it falls on the middle
            expect(Math.abs(computed(formula) - Number(result)), line).toBeLessThan(0.5e-4 + 1e-8);
          }
        },
      ),
    );
    expect(lines).toBeGreaterThan(40);
  });
});
