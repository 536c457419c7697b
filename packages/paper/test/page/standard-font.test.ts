import fc from 'fast-check';
import PDFDocument from 'pdfkit';
import regular from 'pdfkit/standard-fonts/Helvetica';
import bold from 'pdfkit/standard-fonts/HelveticaBold';
import { describe, expect, test } from 'vitest';
import { isStandard, standardFont, standardised } from '../../src/page/standard-font.js';

const FONTS = [
  ['Helvetica', standardFont(regular)],
  ['Helvetica-Bold', standardFont(bold)],
] as const;

/** Everything WinAnsi can write that the standard fonts are trusted with. */
const characters = Array.from({ length: 0x2200 }, (_, i) => String.fromCharCode(i)).filter(isStandard);

test('Adobe Font Metrics of Helvetica (1989-1999): A 667, W 944, m 833, degree 400, Oslash 778, space 278', () => {
  const [[, font]] = FONTS;
  const widths = ['A', 'W', 'm', '°', 'Ø', ' '].map((c) => Math.round(1000 * font.width(c)));
  expect(widths).toEqual([667, 944, 833, 400, 778, 278]);
});

test('Adobe Font Metrics of Helvetica: AV is kerned by 70, "Yo" by 140', () => {
  const [[, font]] = FONTS;
  expect(1000 * (font.width('AV') - font.width('A') - font.width('V'))).toBeCloseTo(-70, 6);
  expect(1000 * (font.width('Yo') - font.width('Y') - font.width('o'))).toBeCloseTo(-140, 6);
});

describe.each(FONTS)('%s', (name, font) => {
  test('any text is as long as the writer of PDF sets it', () => {
    const doc = new PDFDocument({ autoFirstPage: false });
    doc.font(name).fontSize(1);
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...characters), maxLength: 30 }), (text) => {
        expect(font.width(text)).toBeCloseTo(doc.widthOfString(text), 9);
      }),
    );
  });
});

test('the standard fonts have 215 characters here; Ÿ, whose width pdfkit does not know, is not one', () => {
  expect(characters).toHaveLength(215);
  expect(['A', 'é', '€', '×', '°', 'Ø', 'ÿ'].every(isStandard)).toBe(true);
  expect(['Ÿ', 'ł', '⌀', '≤', '\u00A0', '\n'].some(isStandard)).toBe(false);
});

test('signs that look alike are exchanged, letters with their marks put together', () => {
  expect(standardised('⌀ 3\u22122\u00A0e\u0301')).toBe('Ø 3–2 é');
});

test('a font of other characters is refused', () => {
  expect(() => standardFont({ ...regular, glyphNames: 'A B' })).toThrow('widths given, 215 wanted');
});
