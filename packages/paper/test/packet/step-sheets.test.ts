import type { Page } from '@tinwright/paper';
import { PAPERS, type Paper } from '@tinwright/paper';
import { typeface } from '@tinwright/paper/internal';
import { expect, test } from 'vitest';
import { pageFlaws } from '../../../../tests/kit/page-flaws.js';
import { stepSheets } from '../../src/packet/step-sheets.js';
import { letter } from '../../src/page/letter.js';
import { wordsOf } from './packet.js';

/** Pictures of 190 x 129 mm, two for a sheet of A4. */
const pictures = (count: number): readonly Page[] =>
  Array.from({ length: count }, (_, i) => ({
    title: 'step',
    width: 190,
    height: 129,
    blocks: [
      {
        alt: `picture ${i + 1}`,
        items: [
          letter(typeface(), `${i + 1}`, [5, 5], { height: 2.2 }),
          {
            kind: 'stroke',
            pen: 'wide',
            closed: true,
            points: [
              [0, 0],
              [190, 0],
              [190, 129],
              [0, 129],
            ],
          },
        ],
      },
    ],
  }));
const paper = (name: string) => PAPERS.find((p) => p.name === name) as Paper;

test.each([
  ['A4', 2.5, 2],
  ['letter', 2.5, 2],
  ['A3', 2.5, 4],
  ['tabloid', 2.5, 4],
  ['A4', 3.5, 1],
  ['A3', 3.5, 2],
] as const)(
  'on %s with letters of %s mm: %s to a sheet, in their order, on the paper',
  (name, lettering, each) => {
    const sheets = stepSheets(pictures(5), paper(name), lettering);
    expect(sheets).toHaveLength(Math.ceil(5 / each));
    expect(wordsOf(sheets).map((w) => w.text)).toEqual(['1', '2', '3', '4', '5']);
    expect(sheets.flatMap((s) => s.blocks.map((b) => b.alt))).toEqual(
      [1, 2, 3, 4, 5].map((n) => `picture ${n}`),
    );
    expect(sheets.flatMap(pageFlaws)).toEqual([]);
  },
);

test('larger for large print, else in their own size', () => {
  const height = (lettering: number) =>
    wordsOf(stepSheets(pictures(1), paper('A4'), lettering))[0]?.height ?? 0;
  expect(height(2.5)).toBe(2.2);
  expect(height(3.5)).toBeGreaterThan(3);
});

test('no pictures, no sheets', () => {
  expect(stepSheets([], paper('A4'), 2.5)).toEqual([]);
});
