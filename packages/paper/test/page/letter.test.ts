import { typeface } from '@tinwright/paper/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitted, letter, lines } from '../../src/page/letter.js';

const face = typeface();
const width = (text: string) => 2.5 * face.width(text, 'regular');

test('a text starts, is centred or ends at its point, turned or not', () => {
  const w = width('436.5');
  const at = (align: 'start' | 'middle' | 'end', turn: 0 | 90) =>
    letter(face, '436.5', [10, 20], { height: 2.5, align, turn }).at;
  expect(at('start', 0)).toEqual([10, 20]);
  expect(at('middle', 0)).toEqual([10 - w / 2, 20]);
  expect(at('end', 0)).toEqual([10 - w, 20]);
  expect(at('end', 90)).toEqual([10, 20 - w]);
});

test('lines are no wider than asked, and together say the same', () => {
  const text = fc.string({ unit: fc.constantFrom(...'abcdefghijkl mno.-é'), maxLength: 120 });
  fc.assert(
    fc.property(text, fc.integer({ min: 12, max: 80 }), (said, most) => {
      const broken = lines(face, said, most, 2.5);
      for (const line of broken) expect(width(line)).toBeLessThanOrEqual(most + 1e-6);
      expect(broken.join('').replaceAll(' ', '')).toBe(said.replaceAll(' ', ''));
    }),
  );
});

test('words stay whole where they fit, and a no-break space holds two together', () => {
  expect(lines(face, 'gloves to handle the sheet', width('gloves to handle'), 2.5)).toEqual([
    'gloves to handle',
    'the sheet',
  ]);
  expect(lines(face, 'at 5\u00A09/16', width('at 5'), 2.5)[0]).toBe('at');
});

test('a whole number stays with its fraction, and a range too wide for its column is broken between its values', () => {
  expect(lines(face, 'blank 14 3/16 × 10 11/16', width('10 11/16'), 2.5)).toEqual([
    'blank',
    '14\u00A03/16',
    '×',
    '10\u00A011/16',
  ]);
  const range = '12\u00A07/16\u00A0to\u00A012\u00A01/2';
  expect(lines(face, range, width('12 7/16 to'), 2.5)).toEqual(['12\u00A07/16\u00A0to', '12\u00A01/2']);
});

test('a text too long ends with an ellipsis, one that fits stays', () => {
  const short = fitted(face, 'a very long name of a job', width('a very long'), { height: 2.5 });
  expect(short).toBe('a very lo…');
  expect(width(short)).toBeLessThanOrEqual(width('a very long'));
  expect(fitted(face, 'body', 50, { height: 2.5 })).toBe('body');
});
