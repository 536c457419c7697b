// Values cut from one sheet. gcut: Beasley 1985, exact optima by Cintra, https://www.ime.usp.br/~glauber/gcut/.
// cgcut: Christofides & Whitlock 1977; ngcut: Beasley 1985; optima proved from the files by an independent enumeration.
// Files: ESICUP data set collection (CC0).
import { readFileSync } from 'node:fs';
import { limitedValue, unlimitedValue } from '@tinwright/cutting/internal';
import { expect, test } from 'vitest';

const rows = (name: string): string[][] =>
  readFileSync(new URL(`../cases/${name}.csv`, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.trim().split(','));

const sheetOf = (set: string, name: string) => {
  const [, x, y] = rows(`sheets-${set}`).find(([own]) => own === name) ?? [];
  return { x: Number(x), y: Number(y) };
};
const itemsOf = (name: string) =>
  rows(name).map(([w, h, count, value]) => ({
    w: Number(w),
    h: Number(h),
    count: Number(count),
    value: Number(value),
  }));

/** Its quarter turns take ten seconds: `.ci/run` takes them. */
const LARGEST = 'gcut13';
const MANY = process.env.TINWRIGHT_RUNS !== undefined;

test('there are 13 cases without and 15 with limited numbers', () => {
  expect(rows('best-gcut')).toHaveLength(13);
  expect(rows('best-ngcut')).toHaveLength(15);
});

test.each(rows('best-gcut'))(
  '%s, any number of each: %s as drawn, %s with quarter turns',
  (name, fixed, turned) => {
    const items = itemsOf(name as string);
    const both = [...items, ...items.map(({ w, h, value }) => ({ w: h, h: w, value }))];
    const sheet = sheetOf('gcut', name as string);
    expect(unlimitedValue(sheet, items).best.at(-1)).toBe(Number(fixed));
    if (name !== LARGEST || MANY) expect(unlimitedValue(sheet, both).best.at(-1)).toBe(Number(turned));
  },
);

test.each(rows('best-ngcut'))('%s, limited numbers: %s', (name, best) => {
  const found = limitedValue(sheetOf('ngcut', name as string), itemsOf(name as string));
  expect(found.proved).toBe(true);
  expect(found.block?.value).toBe(Number(best));
});

test('a search given up early says how much more there might be', () => {
  const found = limitedValue(sheetOf('ngcut', 'cgcut3'), itemsOf('cgcut3'), 5);
  expect(found.proved).toBe(false);
  expect(found.bound).toBeGreaterThanOrEqual(1860);
  expect(found.block?.value ?? 0).toBeLessThanOrEqual(1860);
});
