import { DIMS_NAMES } from '@tinwright/paper/internal';
import { describe, expect, test } from 'vitest';
import { dimsOf, heldApart } from '../../src/page/dims.js';

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

describe('what rounding must not hide', () => {
  const dims = dimsOf('1/16');

  test('a distance under three steps is printed finer', () => {
    // by hand: 0.0571 in = 3.65/64; 3/16 in and more stay sixteenths
    expect(dims.text(0.0571 * inch)).toBe('1/16');
    expect(dims.text(0.028 * inch)).toBe('1/32');
    expect(dims.text(0.19 * inch)).toBe('3/16');
  });

  test('two lines that are not the same never print the same number', () => {
    // by hand: 8.606 in = 8 + 9.70/16 = 8 + 19.39/32, so 8 5/8 to a sixteenth
    const held = heldApart(dims, { lines: [8.625 * inch, 8.606 * inch, 2 * inch], inside: [] });
    expect([8.625, 8.606, 2].map((v) => held.text(v * inch))).toEqual(['8 5/8', '8 19/32', '2']);
    expect(held.error(8.606 * inch) / inch).toBeCloseTo(8 + 19 / 32 - 8.606, 9);
  });

  test('lines nearer than a sixty-fourth are told in thousandths', () => {
    const held = heldApart(dims, { lines: [3 * inch, 3.004 * inch], inside: [] });
    expect([3, 3.004].map((v) => held.text(v * inch))).toEqual(['3', '3.004']);
  });

  test('what goes into something is rounded down, whatever is nearer', () => {
    const held = heldApart(dims, { lines: [], inside: [6.93 * inch] });
    // 6.93 in = 6 + 14.88/16: 6 15/16 is nearer and does not go in
    expect(dims.text(6.93 * inch)).toBe('6 15/16');
    expect(held.text(6.93 * inch)).toBe('6 7/8');
  });

  test('millimetres and decimal inches are left as they are', () => {
    for (const name of ['mm', 'in'] as const) {
      const plain = dimsOf(name);
      expect(heldApart(plain, { lines: [1, 1.03], inside: [] })).toBe(plain);
    }
  });
});
