import { formatApart, plainNumber } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';

test.each([
  [12.5, 2, '12.5'],
  [12, 2, '12'],
  [100, 0, '100'],
  [100, 3, '100'],
  [0.126, 2, '0.13'],
  [-0.126, 2, '-0.13'],
  [-0.001, 2, '0'],
  [-0.4, 0, '0'],
  [-0, 3, '0'],
  [1e-7, 4, '0'],
  [0.00002, 5, '0.00002'],
  [1234567.5, 1, '1234567.5'],
])('the number %d with at most %d decimals: %s', (value, digits, text) => {
  expect(plainNumber(value, digits)).toBe(text);
});

describe('a length told apart from others', () => {
  test.each([
    ['nothing near: as always', 12.5, ['10 mm'], 'mm', '12.5 mm'],
    ['a hair over', 10_000.001, ['1 mm', '10000 mm'], 'mm', '10000.001 mm'],
    ['a hair under', 0.0999, ['0.1 mm'], 'mm', '0.0999 mm'],
    ['in inches', 25.4 / 16, ['0.063 in'], 'in', '0.0625 in'],
    ['a hair over in inches', 5.9945, ['0.236 in'], 'in', '0.236004 in'],
    ['next to nothing', 0.000_01, [], 'mm', '0.00001 mm'],
    ['less than decimals can show', 1e-20, [], 'mm', '1e-20 mm'],
    ['nothing itself', 0, ['1 mm'], 'mm', '0 mm'],
  ] as const)('%s', (_, mm, others, unit, text) => {
    expect(formatApart(mm, others, unit)).toBe(text);
  });
});
