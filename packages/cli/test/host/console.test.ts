import type { Host } from '@tinwright/cli';
import { describe, expect, test } from 'vitest';
import { paint, table } from '../../src/host/console.js';

const host = (colour: boolean): Host => ({
  out: () => undefined,
  err: () => undefined,
  colour,
  stdin: async () => new Uint8Array(),
});

// ECMA-48 (SGR): 1 bold, 31 red, 33 yellow, 34 blue, 0 back to normal; from memory
test.each([
  ['bold', 1],
  ['red', 31],
  ['yellow', 33],
  ['blue', 34],
] as const)('%s is code %d, and back to normal after the text', (style, code) => {
  expect(paint(host(true), style, 'tray')).toBe(`\u001b[${code}mtray\u001b[0m`);
});

test('a host without colour gets the text as it is', () => {
  expect(paint(host(false), 'red', 'tray')).toBe('tray');
});

describe('a table', () => {
  test('aligns its columns two blanks apart, without blanks at the line ends', () => {
    const rows = [
      ['name', 'kg', ''],
      ['seed-tray', '1', 'of tin'],
    ];
    expect(table(rows)).toBe('name       kg\nseed-tray  1   of tin\n');
  });

  test('takes rows of different lengths', () => {
    expect(table([['a', 'b'], ['long'], ['c', 'd']])).toBe('a     b\nlong\nc     d\n');
  });

  test('counts letters, not the units they are stored in', () => {
    expect(
      table([
        ['🌱', 'x'],
        ['ab', 'y'],
      ]),
    ).toBe('🌱   x\nab  y\n');
  });
});
