import type { Words } from '@tinwright/paper';
import { typeface } from '@tinwright/paper/internal';
import { expect, test } from 'vitest';
import { tableFlow } from '../../src/page/table.js';

const setting = { face: typeface(), height: 2.5 };
const table = {
  heading: 'Sizes',
  columns: [{ title: 'name' }, { title: 'size', align: 'end' as const }, { title: 'what', grows: true }],
  rows: [
    ['length', { text: '400', value: 400 }, 'between the outside faces of the folded end tabs of a body'],
    ['width', { text: '200', value: 200 }, 'over'],
  ],
  notes: ['measured'],
};
const words = (width: number, row: number) =>
  (tableFlow(table, setting)(width).rows[row]?.items ?? []).filter((i): i is Words => i.kind === 'words');

test('columns start and end in line', () => {
  const [a, b] = [words(120, 0), words(120, 1)];
  expect(a[0]?.at[0]).toBe(b[0]?.at[0]);
  const end = (w: Words | undefined) => (w?.at[0] ?? 0) + (w?.width ?? 0);
  expect(end(a[1])).toBeCloseTo(end(b[1]), 9);
  expect(a[2]?.at[0]).toBe(b[2]?.at[0]);
});

test('the column that grows takes the rest and breaks its texts; the row grows with it', () => {
  const [wide, narrow] = [tableFlow(table, setting)(160), tableFlow(table, setting)(60)];
  expect(words(160, 0)).toHaveLength(3);
  expect(words(60, 0).length).toBeGreaterThan(4);
  expect(narrow.rows[0]?.height).toBeGreaterThan(2 * (wide.rows[0]?.height ?? 0));
  expect(narrow.rows).toHaveLength(wide.rows.length);
  for (const w of words(60, 0)) expect(w.at[0] + w.width).toBeLessThanOrEqual(60);
});

test('a size carries its value, notes stand under the rows', () => {
  expect(words(120, 0).map((w) => w.value)).toEqual([undefined, 400, undefined]);
  expect(words(120, 2).map((w) => w.text)).toEqual(['measured']);
});

test('a table with too little room for its texts cuts no word and no number while every column can have its widest', () => {
  const tight = {
    heading: 'Marking',
    columns: [
      { title: 'from' },
      { title: 'offset', align: 'end' as const },
      { title: 'along', grows: true },
      { title: 'face' },
    ],
    rows: [
      [
        'bottom',
        '11 15/16',
        '1/2\u00A0to\u00A012\u00A07/16; 12\u00A07/16\u00A0to\u00A012\u00A01/2',
        'marked face, inside of the bend at the end of the box',
      ],
    ],
  };
  const said = (width: number) =>
    (tableFlow(tight, setting)(width).rows[0]?.items ?? []).flatMap((i) =>
      i.kind === 'words' ? [i.text] : [],
    );
  const whole = ['bottom', '11 15/16', '1/2 to 12 7/16;', '12 7/16 to 12 1/2'];
  expect(said(85)).toEqual(expect.arrayContaining(whole));
  // with less the widest column gives way first, between values
  expect(said(66)).toEqual(expect.arrayContaining(['bottom', '11 15/16', '12 1/2']));
});
