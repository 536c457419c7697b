import { DIMS_NAMES } from '@tinwright/paper/internal';
import { expect, test } from 'vitest';
import { dimsOf } from '../../src/plan/dims.js';

const inch = 25.4;

test('there are six ways to print sizes', () => {
  expect(DIMS_NAMES).toEqual(['mm', 'in', '1/8', '1/16', '1/32', '1/64']);
  for (const name of DIMS_NAMES) expect(dimsOf(name).name).toBe(name);
});

test('millimetres to a tenth, inches to a thousandth, without trailing zeros', () => {
  expect([436.46, 20, 0.04, 335.05].map(dimsOf('mm').text)).toEqual(['436.5', '20', '0', '335.1']);
  expect([436.46, inch, inch / 8].map(dimsOf('in').text)).toEqual(['17.183', '1', '0.125']);
});

// by hand: 17.1835 in = 17 + 1.468/8 = 17 + 2.936/16 = 17 + 5.87/32 = 17 + 11.74/64
test.each([
  ['1/8', '17 1/8', -0.0585],
  ['1/16', '17 3/16', 0.004],
  ['1/32', '17 3/16', 0.004],
  ['1/64', '17 3/16', 0.004],
] as const)('17.1835 in to the nearest %s: %s', (name, text, off) => {
  const dims = dimsOf(name);
  expect(dims.text(17.1835 * inch)).toBe(text);
  expect(dims.error(17.1835 * inch) / inch).toBeCloseTo(off, 9);
});

// by hand: 0.71 in = 5.68/8, 11.36/16, 22.72/32, 45.44/64
test.each([
  ['1/8', '3/4'],
  ['1/16', '11/16'],
  ['1/32', '23/32'],
  ['1/64', '45/64'],
] as const)('0.71 in to the nearest %s: %s', (name, text) => {
  expect(dimsOf(name).text(0.71 * inch)).toBe(text);
});

test('an exact fraction has no error; a finer text tells others apart', () => {
  const dims = dimsOf('1/16');
  expect(dims.error((9 + 3 / 4) * inch)).toBe(0);
  expect(dims.fine(9.7361 * inch)).toBe('9.7361');
  expect(dimsOf('mm').fine(2.226)).toBe('2.23');
});

test('angles to a tenth of a degree', () => {
  expect([90, 69.444, 180].map(dimsOf('mm').angle)).toEqual(['90°', '69.4°', '180°']);
});
