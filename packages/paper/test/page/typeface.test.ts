import { typeface } from '@tinwright/paper/internal';
import PDFDocument from 'pdfkit';
import { describe, expect, test } from 'vitest';
import { spareFont } from '../../src/page/spare-font.js';
import { isPlain, SIZE_PER_CAPITAL } from '../../src/page/typeface.js';
import { spareBytes } from '../spare.js';

const plain = typeface();

test('capitals 1 mm high: Helvetica is set at 1000/718 of that', () => {
  expect(SIZE_PER_CAPITAL).toBeCloseTo(1000 / 718, 12);
  expect(plain.width('A', 'regular')).toBeCloseTo(0.667 * SIZE_PER_CAPITAL, 9);
});

test('plain text is one run', () => {
  expect(plain.runs('B1 up 90° Ø3.3', 'bold')).toEqual([{ font: 'bold', text: 'B1 up 90° Ø3.3' }]);
});

test('what no font has is its code point in brackets, with the marks that combine with it', () => {
  expect(plain.runs('tuszłó', 'regular')).toEqual([{ font: 'regular', text: 'tusz[0142]ó' }]);
  expect(plain.runs('x̌山', 'regular')).toEqual([{ font: 'regular', text: '[0078+030C][5C71]' }]);
});

test('only text of the standard fonts is plain', () => {
  expect(['body', 'Gehäuse', '⌀ 3'].map(isPlain)).toEqual([true, true, true]);
  expect(['łapa', 'Гряда', '山'].map(isPlain)).toEqual([false, false, false]);
});

describe('with a spare font', () => {
  test('it takes what the standard fonts lack, and no more', async () => {
    const face = typeface(spareFont(await spareBytes()));
    expect(face.runs('Гряда 1', 'regular')).toEqual([
      { font: 'spare', text: 'Гряда' },
      { font: 'regular', text: ' 1' },
    ]);
    expect(face.runs('łapa', 'bold')).toEqual([
      { font: 'spare', text: 'ł' },
      { font: 'bold', text: 'apa' },
    ]);
    expect(face.runs('山', 'regular')).toEqual([{ font: 'regular', text: '[5C71]' }]);
  });

  test('its text is as long as the writer of PDF sets it', async () => {
    const bytes = await spareBytes();
    const face = typeface(spareFont(bytes));
    const doc = new PDFDocument({ autoFirstPage: false });
    doc.font(bytes).fontSize(1);
    for (const text of ['Гряда', 'πλάκα', 'ł'])
      expect(face.width(text, 'regular') / SIZE_PER_CAPITAL).toBeCloseTo(doc.widthOfString(text), 6);
  });
});
