import { expect, test } from 'vitest';
import { textTable } from '../../src/table/text-table.js';

test('twenty thousand texts keep their numbers, also those that are set again; others have none', () => {
  const table = textTable();
  expect(table.get('')).toBeUndefined();
  for (let i = 0; i < 20_000; i++) table.set(`t${i}`, [i * 2 ** 30, i]);
  for (let i = 0; i < 20_000; i += 7) table.set(`t${i}`, [-i, 2 ** 32 - 1]);
  for (let i = 0; i < 20_000; i++)
    expect(table.get(`t${i}`)).toEqual(i % 7 === 0 ? [i === 0 ? -0 : -i, 2 ** 32 - 1] : [i * 2 ** 30, i]);
  expect(table.get('t20000')).toBeUndefined();
});
