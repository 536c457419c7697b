import { din6935, handbook, kFactor, linear, nominal } from '@tinwright/core';
import { curlOf } from '@tinwright/core/family';
import { describe, expect, test } from 'vitest';
import { workingIn } from '../../src/bend/working-in.js';

const IN = 25.4;
const bend = { thickness: IN / 16, insideRadius: IN / 16, angle: 90 };

// Machinery's Handbook, 31st ed., p. 1421, medium group: L = 0.64·T + 1.57·R; 1/16 in of each: 0.1381 in
test('a bend of 1/16 in by the handbook: worked out in inches', () => {
  const rule = handbook('medium');
  const { unit, lines } = workingIn('in', rule, bend, rule.terms(bend));
  expect(unit).toBe('in');
  expect(lines).toEqual([
    'BA = (0.64 × 0.0625 + 1.57 × 0.0625) × 90/90 = 0.1381',
    'SB = tan(90°/2) × 0.125 = 0.125',
    'BD = 2 × 0.125 − 0.1381 = 0.1119',
  ]);
});

describe.each([kFactor(0.42), din6935, handbook('soft'), linear(0.5, 1.5), nominal])('$title', (rule) => {
  test('in millimetres the working is the one of the terms', () => {
    const terms = rule.terms(bend);
    expect(workingIn('mm', rule, bend, terms)).toEqual({ unit: 'mm', lines: terms.working });
  });

  test('in inches every result is the same length', () => {
    const results = (lines: readonly string[]) =>
      lines.filter((l) => /^(BA|SB|BD|v) = /.test(l)).map((l) => Number(l.split(' = ').at(-1)));
    const terms = rule.terms(bend);
    const { unit, lines } = workingIn('in', rule, bend, terms);
    expect(unit).toBe('in');
    expect(lines).toHaveLength(terms.working.length);
    for (const [i, inches] of results(lines).entries())
      expect(Math.abs(inches * IN - (results(terms.working)[i] as number))).toBeLessThan(0.0001 * IN);
  });

  test.each([1, 2, 3, 5, 7, 11])('a limit of the rule in mm is its limit in inches: thickness %d', (T) => {
    const edge = { thickness: T, insideRadius: 0.05 * T, angle: 90 }; // where DIN 6935 starts
    expect(workingIn('in', rule, edge, rule.terms(edge)).unit).toBe('in');
  });
});

test('terms that are not of the rule, of an edge rolled round a wire, stay in millimetres', () => {
  const { angle, insideRadius, terms } = curlOf({ diameter: 3, allowance: null }, 0.7);
  const working = workingIn('in', kFactor(0.42), { thickness: 0.7, insideRadius, angle }, terms);
  expect(working).toEqual({ unit: 'mm', lines: terms.working });
});
