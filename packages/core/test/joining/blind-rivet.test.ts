import type { BlindRivetAsk, Remark } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';
import { said, saidNeeds } from './said.js';
import { kindNamed, stackOf } from './stack.js';

const INCH = 25.4;
const kind = kindNamed<BlindRivetAsk>('blind-rivet');
const ask = (diameter: number): BlindRivetAsk => ({ count: null, pitch: null, diameter });

function remarks(sheets: readonly number[], diameter: number, layers = sheets.length): readonly Remark[] {
  return kind.remarks(stackOf(sheets), ask(diameter), { layers, reach: () => 0 });
}

// 2.5 D (NAVEDTRA 14251, read) is stricter than 2 D (TM 10-5410-229-13&P 5-6, read); 3 D, and usually 4 D to 8 D, NAVEDTRA 14018, read.
// Millimetres worked out by hand: D, 2.5 D, 3 D, 4 D
const WORKED = [
  [3 / 32, 5.95, 7.14, 9.53],
  [1 / 8, 7.94, 9.53, 12.7],
  [5 / 32, 9.92, 11.9, 15.9],
  [3 / 16, 11.9, 14.3, 19.1],
] as const;

describe('distances', () => {
  test.each(WORKED)('%d in: edge %d, pitch %d, usually %d mm to twice that', (d, edge, pitch, usual) => {
    const needs = kind.needs(stackOf([1, 1]), ask(d * INCH), 2);
    expect(Math.abs(needs.edge - edge)).toBeLessThanOrEqual(0.05 + 1e-9); // printed to a tenth
    expect(Math.abs(needs.pitch - pitch)).toBeLessThanOrEqual(0.05 + 1e-9); // printed to a tenth
    expect(needs.usualPitch).toBeGreaterThanOrEqual(usual - 0.05);
    expect(needs.usualPitch).toBeLessThanOrEqual(2 * (usual + 0.05)); // 8 D
  });

  test('3.2 mm: 8 mm to an edge, 9.6 mm apart, whatever the sheets', () => {
    for (const stack of [stackOf([0.5, 0.5]), stackOf([2, 1])]) {
      const needs = kind.needs(stack, ask(3.2), 2);
      expect(needs.edge).toBeCloseTo(8, 9);
      expect(needs.pitch).toBeCloseTo(9.6, 9);
    }
  });

  test('the sentence on the edge names both rules with both sources, and which was taken', () => {
    const { edgeSource } = saidNeeds(kind.needs(stackOf([1, 1]), ask(4), 2));
    expect(edgeSource).toMatch(/2\.5 D by NAVEDTRA 14251/);
    expect(edgeSource).toMatch(/; 2 D by TM 10-5410-229-13&P/);
    expect(edgeSource).toContain('stricter');
  });

  test('beside a bend the head has to sit flat: half the head and 1 mm, said to have no source', () => {
    // DIN 7337 head of 3.2 mm: 6.5 mm; the millimetre common practice, no source
    const { bend, bendSource } = saidNeeds(kind.needs(stackOf([1, 1]), ask(3.2), 2));
    expect(bend).toBeCloseTo(4.25, 9);
    expect(bendSource).toContain('½ D(head) + 1 mm');
    expect(bendSource).toContain('common practice, no source');
  });

  test('a hole in every sheet of the stack, the middle of its band', () => {
    // dh1 of the ISO 15977 family 3.3 to 3.4 and 4.1 to 4.2 mm, IFI-114 0.129 to 0.133 in: from memory
    const holes = (stack: readonly number[], d: number) => kind.needs(stackOf(stack), ask(d), 2).holes;
    expect(holes([1, 1], 3.2)).toEqual([expect.closeTo(3.35, 9), expect.closeTo(3.35, 9)]);
    expect(holes([1, 1, 1], 4)).toEqual(Array.from({ length: 3 }, () => expect.closeTo(4.15, 9)));
    expect(holes([1, 1], INCH / 8)).toEqual([
      expect.closeTo(0.131 * INCH, 9),
      expect.closeTo(0.131 * INCH, 9),
    ]);
  });
});

describe('what to know of a stack', () => {
  test.each([
    [[1, 1], 3.2],
    [[0.8, 0.8], 3.2],
    [[0.5, 0.5], 4],
    [[3, 3], 4],
  ])('sheets of %j mm under a rivet of %d mm: nothing', (sheets, d) => {
    expect(remarks(sheets, d)).toEqual([]);
  });

  test('thinner than its shortest grip: total and limit are told', () => {
    // ISO 15981, columns inferred: a 4.8 mm rivet holds 1.5 mm at least; 3.2 mm from 0.5 mm, from memory
    expect(remarks([0.7, 0.7], 3.2)).toEqual([]);
    const [found, ...more] = remarks([0.7, 0.7], 4.8);
    expect(more).toEqual([]);
    expect(found).toMatchObject({ code: 'rivet-grip', severity: 'warning', limit: 1.5 });
    expect(found?.value).toBeCloseTo(1.4, 9);
    expect(spoken(found)?.source).toContain('ISO 15981');
  });

  test('thicker than its longest grip', () => {
    // TM 10-5410-221-14 table 4-3: 1/8 in holds up to 0.5 in, 3/32 in up to 0.25 in
    expect(remarks([3, 3], INCH / 8)).toEqual([]);
    const [found] = remarks([3, 3.5], (3 / 32) * INCH).filter((r) => r.code === 'rivet-grip');
    expect(found).toMatchObject({ value: 6.5 });
    expect(spoken(found)?.source).toContain('TM 10-5410-221-14 table 4-3');
    expect(found?.limit).toBeCloseTo(0.25 * INCH, 9);
  });

  test('a rivet of 2.4 mm through 4 mm: between its lengths, which hold up to 3 mm and from 6 mm', () => {
    // ISO 15981, read in a copy, columns inferred: length 6 holds 0.5 to 3 mm, length 12 holds 6 to 9 mm
    const [found] = said(remarks([2, 2], 2.4)).filter((r) => r.code === 'rivet-grip');
    expect(found).toMatchObject({ value: 4, limit: 3 });
    expect(found?.message).toContain('its lengths hold 0.5 mm to 3 mm and 6 mm to 9 mm');
    expect(found?.fix).toBe('take a 3/32 in rivet, which holds it'); // 0.02 to 0.25 in by the manual
  });

  test('thicker than its longest grip: the rivet it says to take holds the sheets', () => {
    // ISO 15981: 3.2 mm holds 13 mm at most, 6.4 mm 24 mm; the nearest that is no thinner than the sheets is 6 mm, as 6.4
    const [found] = remarks([6, 7.5], 3.2).filter((r) => r.code === 'rivet-grip');
    expect(found).toMatchObject({ value: 13.5, limit: 13 });
    expect(spoken(found)?.fix).toBe(
      'no rivet listed here holds it: take thinner sheets, or another fastening',
    );
    const [thinner] = remarks([6, 6, 3], 3.2).filter((r) => r.code === 'rivet-grip');
    expect(spoken(thinner)?.fix).toBe('take a 6.0 mm rivet, which holds it');
    const [none] = remarks([10, 15], 3.2).filter((r) => r.code === 'rivet-grip');
    expect(spoken(none)?.fix).toMatch(/^no rivet listed here holds it/);
  });

  test('the grips of 3/16 in are not those of the manual, which had no such row in the copy', () => {
    const [found] = remarks([0.7, 0.7], (3 / 16) * INCH).filter((r) => r.code === 'rivet-grip');
    expect(spoken(found)?.source).toContain('ISO 15981');
  });

  test('no thinner than the thickest sheet', () => {
    // NAVEDTRA 14018, read: diameter from one to three times the thickest sheet; above three a guide only
    const found = remarks([1, 3], 2.4).filter((r) => r.code === 'rivet-thin');
    expect(found.map((r) => spoken(r))).toMatchObject([{ value: 2.4, limit: 3, source: 'NAVEDTRA 14018' }]);
    expect(remarks([1, 2.4], 2.4).map((r) => r.code)).not.toContain('rivet-thin');
    expect(remarks([0.8, 0.8], 4)).toEqual([]); // five times the sheet, and common
  });

  test('more sheets lying there than are drilled: move it off the hem', () => {
    const found = remarks([1, 1], 3.2, 4);
    expect(found).toMatchObject([{ code: 'rivet-layers', value: 4, limit: 2 }]);
    expect(spoken(found[0])?.fix).toContain('hem');
    expect(remarks([1, 1, 1], 3.2, 3)).toEqual([]);
  });
});
