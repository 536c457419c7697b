import { describe, expect, test } from 'vitest';
import { tinwright } from '../host.js';

const MM_PER_INCH = 25.4;
const json = async (...options: readonly string[]) => {
  const { exit, out, err } = await tinwright('bend', ...options, '--json');
  expect(err).toBe('');
  expect(exit).toBe(0);
  return JSON.parse(out);
};

// Machinery's Handbook, 31st ed., p. 1421: 90 degrees in sheet of 1/16 in at an inside radius of 1/16 in,
// calculated from the printed formulas; four decimals
describe.each([
  ['soft', 0.1325],
  ['medium', 0.1381],
  ['hard', 0.1425],
])('handbook, %s group', (group, inches) => {
  const options = ['--rule', 'handbook', '--group', group];

  test(`in inches: allowance ${inches} in`, async () => {
    const { allowance } = await json('--units', 'in', '--thickness', '1/16', '--radius', '1/16', ...options);
    expect(Math.abs(allowance / MM_PER_INCH - inches)).toBeLessThanOrEqual(0.00006);
  });

  test(`in millimetres: 1.5875 mm gives ${inches} in too`, async () => {
    const { allowance } = await json('--thickness', '1.5875', '--radius', '1.5875', ...options);
    expect(Math.abs(allowance / MM_PER_INCH - inches)).toBeLessThanOrEqual(0.00006);
  });

  test('the answer is printed in the units of the question', async () => {
    const printed = async (...sheet: readonly string[]) => {
      const { out } = await tinwright('bend', ...sheet, ...options);
      const [, number, unit] = /^allowance +(\S+) (\S+)$/m.exec(out) ?? [];
      return { number: Number(number), unit };
    };
    const inch = await printed('--units', 'in', '--thickness', '1/16', '--radius', '1/16');
    expect(inch.unit).toBe('in');
    expect(Math.abs(inch.number - inches)).toBeLessThan(0.0006); // three decimals
    const mm = await printed('--thickness', '1.5875', '--radius', '1.5875');
    expect(mm.unit).toBe('mm');
    expect(Math.abs(mm.number - inches * MM_PER_INCH)).toBeLessThan(0.007); // two decimals
  });
});

// Machinery's Handbook, 31st ed., p. 1421, fig. 13: strap of 1/8 in, soft steel, straight 3.5 in: 5.545 in
test('handbook strap bent 180 and 60 degrees: 5.545 in', async () => {
  const rule = ['--units', 'in', '--thickness', '1/8', '--rule', 'handbook', '--group', 'medium'];
  const first = await json(...rule, '--radius', '3/8', '--angle', '180');
  const second = await json(...rule, '--radius', '5/8', '--angle', '60');
  expect(3.5 + (first.allowance + second.allowance) / MM_PER_INCH).toBeCloseTo(5.545, 3);
});

// Westermann textbook, section 16.8: v = 0.5·r + 1.5·t, legs 50, 40 and 30, r = t = 1: 116 mm
test('rule of thumb on a bracket of 50, 40 and 30 mm: flat length 116 mm', async () => {
  const linear = ['--rule', 'linear', '--perRadius', '0.5', '--perThickness', '1.5'];
  const { flatLength } = await json('--thickness', '1', '--radius', '1', '--legs', '50,40,30', ...linear);
  expect(flatLength).toBeCloseTo(116, 9);
});

// Tabellenbuch Metall, 90 degrees, values from memory: legs 25, 20, 15, s = 2, r = 4, v = 4.459: 51.08 mm
test('DIN 6935 on a bracket of 25, 20 and 15 mm: flat length 51.08 mm', async () => {
  const sheet = ['--thickness', '2', '--radius', '4', '--rule', 'din-6935'];
  const { deduction, flatLength } = await json(...sheet, '--legs', '25,20,15');
  expect(deduction).toBeCloseTo(4.459, 3);
  expect(flatLength).toBeCloseTo(51.08, 2);
});

// AC 43.13-1B, table 4-7: setback K = tan(A/2), times R + T
test.each([
  [45, 0.4142],
  [60, 0.5773],
  [90, 1],
])('outside setback at %d degrees is %f times R + T', async (angle, k) => {
  const { setback } = await json('--thickness', '1', '--radius', '1', '--angle', String(angle));
  expect(Math.abs(setback / 2 - k)).toBeLessThanOrEqual(0.0001); // the table cuts off, not rounds
});

test('two legs of 30 and 40 mm: 70 less the deduction', async () => {
  const sheet = ['--thickness', '1', '--radius', '1', '--k', '0.42'];
  const { flatLength, allowance, legs } = await json(...sheet, '--legs', '30, 40');
  expect(legs).toEqual([30, 40]);
  expect(allowance).toBeCloseTo((Math.PI / 2) * 1.42, 12);
  expect(flatLength).toBeCloseTo(70 - (4 - (Math.PI / 2) * 1.42), 12);
});

test('text shows the terms and the working', async () => {
  const { out } = await tinwright('bend', '--thickness', '1', '--radius', '1', '--k', '0.42');
  for (const row of ['allowance  2.23 mm', 'setback    2 mm', 'deduction  1.77 mm'])
    expect(out).toContain(row);
  expect(out).toContain('BD = 2 × 2 − 2.2305 = 1.7695');
});

// galvanised sheet gauge 20: 0.0396 in, two charts that agree
test('a gauge is read in the system of the material', async () => {
  const { thickness } = await json('--material', 'galvanised-steel', '--gauge', '20');
  expect(thickness / MM_PER_INCH).toBeCloseTo(0.0396, 9);
});

test('a length may carry its own unit', async () => {
  const { thickness, insideRadius } = await json('--units', 'in', '--thickness', '2 mm', '--radius', '1/8');
  expect(thickness).toBe(2);
  expect(insideRadius).toBeCloseTo(3.175, 12);
});

test.each([
  ['no thickness', [], 'no thickness'],
  ['thickness and gauge', ['--thickness', '1', '--gauge', '20'], 'Give one of the two'],
  ['a thickness of zero', ['--thickness', '0'], '0.1 mm to 6 mm allowed'],
  ['a thickness that is no length', ['--thickness', 'thin'], '"thin" is not a length'],
  ['an angle of 300 degrees', ['--thickness', '1', '--angle', '300'], '300 deg given, 0 to 270 deg allowed'],
  ['an angle of zero', ['--thickness', '1', '--angle', '0'], 'more than 0 to 270 deg allowed'],
  ['an angle that is no number', ['--thickness', '1', '--angle', 'square'], 'a number allowed'],
  ['an unknown rule', ['--thickness', '1', '--rule', 'din-6953'], 'Did you mean "din-6935"?'],
  ['an unknown material', ['--thickness', '1', '--material', 'steel'], 'mild-steel'],
  ['one leg of nothing', ['--thickness', '1', '--legs', ''], '--legs: an empty text is not a length'],
  [
    'a group the handbook lacks',
    ['--thickness', '1', '--rule', 'handbook', '--group', 'mild'],
    'medium, hard',
  ],
  [
    'a rule without its constants',
    ['--thickness', '1', '--rule', 'linear'],
    '--perRadius: missing. Give a number',
  ],
  ['a radius DIN 6935 stops at', ['--thickness', '1', '--radius', '0', '--rule', 'din-6935'], 'r/s = 0.05'],
])('%s is refused, and says what is allowed', async (_, options, says) => {
  const { exit, out, err } = await tinwright('bend', ...options);
  expect(exit).toBe(2);
  expect(out).toBe('');
  expect(err).toContain(says);
  expect(err).toMatch(/^bend: /);
});
