import { PAPERS, SCALES } from '@tinwright/paper';
import { describe, expect, test } from 'vitest';
import { columnsIn, roomOf, sheetOf } from '../../src/page/sheet.js';

test('papers by ISO 216 and ASME Y14.1: A4, A3, 8 1/2 x 11 in, 11 x 17 in of 25.4 mm', () => {
  expect(PAPERS.map((p) => [p.name, p.width, p.height])).toEqual([
    ['A4', 210, 297],
    ['letter', 215.9, 279.4],
    ['A3', 297, 420],
    ['tabloid', 279.4, 431.8],
  ]);
});

test('scales are those of ISO 5455, each what its text says, the largest first', () => {
  for (const { text, ratio } of SCALES) {
    const [page, part] = text.split(':').map(Number) as [number, number];
    expect(ratio).toBeCloseTo(page / part, 12);
    expect(String(Math.max(page, part))).toMatch(/^[125]0*$/);
  }
  expect(SCALES.map((s) => s.ratio)).toEqual(SCALES.map((s) => s.ratio).toSorted((a, b) => b - a));
});

describe.each(['portrait', 'landscape'] as const)('A4 %s', (way) => {
  const sheet = sheetOf(PAPERS[0] as (typeof PAPERS)[number], way);

  test('frame of ISO 5457: 20 mm to the left for filing, 10 mm elsewhere', () => {
    expect(sheet.frame.min).toEqual([20, 10]);
    expect(sheet.frame.max).toEqual([sheet.width - 10, sheet.height - 10]);
    expect(sheet.width < sheet.height).toBe(way === 'portrait');
  });

  test('the room lies in the frame, over the title block', () => {
    const room = roomOf(sheet, 40);
    expect(room.min[1]).toBeGreaterThanOrEqual(sheet.frame.min[1] + 40);
    expect(room.max[0]).toBeLessThan(sheet.frame.max[0]);
  });
});

test('a box is cut into as many columns as it holds, equally wide', () => {
  const columns = columnsIn({ min: [0, 0], max: [350, 100] }, 168, 10);
  expect(columns.map((c) => [c.min[0], c.max[0]])).toEqual([
    [0, 170],
    [180, 350],
  ]);
  expect(columnsIn({ min: [0, 0], max: [100, 100] }, 168, 10)).toHaveLength(1);
});
