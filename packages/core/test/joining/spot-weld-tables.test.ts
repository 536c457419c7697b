import { SPOT_WELD_TABLES, WELD_EDGE_TABLE } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';
import { rowFor } from '../../src/joining/spot-weld-tables.js';

const INCH = 25.4;
const [TABLE_A, TABLE_B] = SPOT_WELD_TABLES;

// Optimum conditions for SAE 1010, single impulse, inches; welding-equipment data sheet, docslib.org/doc/9660685,
// read there; the first five rows read again in scribd.com 282342760. Thickness of the thinnest outside sheet,
// body D of the electrode, fused zone Dw, least pitch S, least overlap L.
const A = [
  ['.010', 0.01, 1 / 2, 0.113, 1 / 4, 3 / 8],
  ['.021', 0.021, 1 / 2, 0.139, 3 / 8, 7 / 16],
  ['.031', 0.031, 1 / 2, 0.161, 1 / 2, 7 / 16],
  ['.040', 0.04, 5 / 8, 0.181, 3 / 4, 1 / 2],
  ['.050', 0.05, 5 / 8, 0.21, 7 / 8, 9 / 16],
  ['.062', 0.062, 5 / 8, 0.231, 1, 5 / 8],
  ['.078', 0.078, 5 / 8, 0.268, 9 / 8, 11 / 16],
  ['.094', 0.094, 5 / 8, 0.304, 5 / 4, 3 / 4],
  ['.109', 0.109, 7 / 8, 0.338, 21 / 16, 13 / 16],
  ['.125', 0.125, 7 / 8, 0.375, 3 / 2, 7 / 8],
] as const;

// the same rows in millimetres, rounded, worked out once by hand: t, D, Dw, S, L
const A_IN_MM = [
  [0.254, 12.7, 2.87, 6.35, 9.53],
  [0.533, 12.7, 3.53, 9.53, 11.11],
  [0.787, 12.7, 4.09, 12.7, 11.11],
  [1.016, 15.9, 4.6, 19.05, 12.7],
  [1.27, 15.9, 5.33, 22.23, 14.29],
  [1.575, 15.9, 5.87, 25.4, 15.88],
  [1.981, 15.9, 6.81, 28.58, 17.46],
  [2.388, 15.9, 7.72, 31.75, 19.05],
  [2.769, 22.2, 8.59, 33.34, 20.64],
  [3.175, 22.2, 9.53, 38.1, 22.23],
] as const;

// Table 8.1, class A, of a pedestal spot-welder's instruction manual, mm; read there. t, least pitch, least overlap,
// least electrode D, nugget
const B = [
  [0.25, 6, 9.5, 9.5, 3],
  [0.5, 9.5, 11, 9.5, 4],
  [0.75, 12.5, 11, 9.5, 5],
  [1.0, 19.5, 12.5, 13, 5.5],
  [1.25, 22.5, 15, 13, 6],
  [1.5, 27, 16, 13, 6.5],
  [2.0, 35, 18, 16, 7.3],
  [2.5, 42, 19, 16, 8.3],
  [2.8, 48, 21, 16, 9],
  [3.2, 50, 23, 22, 10],
] as const;

// Least edge distance by the thinner sheet, inches; T.O. 1-1A-9 / TM 43-0106 table 2-24, read in
// aviationandaccessories.tpub.com TM-43-0106_128
const EDGE = [
  ['.036', 0.036, 1 / 4],
  ['.040', 0.04, 9 / 32],
  ['.045', 0.045, 5 / 16],
  ['.050', 0.05, 5 / 16],
  ['.063', 0.063, 3 / 8],
  ['.071', 0.071, 3 / 8],
  ['.080', 0.08, 13 / 32],
  ['.090', 0.09, 7 / 16],
  ['.100', 0.1, 7 / 16],
  ['.125', 0.125, 9 / 16],
  ['.160', 0.16, 5 / 8],
] as const;

describe('table A, SAE 1010 in inches', () => {
  test('it has ten rows and names where it was read', () => {
    expect(TABLE_A.rows).toHaveLength(A.length);
    expect(TABLE_A.name).toBe('table A');
    expect(TABLE_A.source).toContain('docslib.org/doc/9660685');
  });

  test.each(A)('%s in: electrode, fused zone, pitch and overlap as printed', (printed, t, D, Dw, S, L) => {
    const row = TABLE_A.rows[A.findIndex(([name]) => name === printed)];
    const inches = (mm = Number.NaN) => mm / INCH;
    expect(inches(row?.thickness)).toBeCloseTo(t, 12);
    expect(inches(row?.electrode)).toBeCloseTo(D, 12);
    expect(inches(row?.nugget)).toBeCloseTo(Dw, 12);
    expect(inches(row?.pitch)).toBeCloseTo(S, 12);
    expect(inches(row?.overlap)).toBeCloseTo(L, 12);
  });

  test.each(A_IN_MM)('%d mm: D %d, Dw %d, pitch %d, overlap %d mm within rounding', (t, D, Dw, S, L) => {
    const row = TABLE_A.rows.find((r) => Math.abs(r.thickness - t) <= 0.0005 + 1e-9);
    expect(Math.abs((row?.electrode ?? 0) - D)).toBeLessThanOrEqual(0.05); // printed to a tenth
    for (const [found, wanted] of [
      [row?.nugget, Dw],
      [row?.pitch, S],
      [row?.overlap, L],
    ] as const)
      expect(Math.abs((found ?? 0) - wanted)).toBeLessThanOrEqual(0.005 + 1e-9);
  });
});

describe('table B, class A in millimetres', () => {
  test('it has ten rows and names where it was read', () => {
    expect(TABLE_B.rows).toHaveLength(B.length);
    expect(TABLE_B.name).toBe('table B');
    expect(TABLE_B.source).toContain('table 8.1');
  });

  test.each(B)(
    '%d mm: pitch %d, overlap %d, electrode %d, nugget %d mm',
    (thickness, pitch, overlap, electrode, nugget) => {
      expect(TABLE_B.rows.find((r) => r.thickness === thickness)).toEqual({
        thickness,
        pitch,
        overlap,
        electrode,
        nugget,
      });
    },
  );
});

describe('edge distances of the aircraft order', () => {
  test('it has eleven rows and names the order', () => {
    expect(WELD_EDGE_TABLE.rows).toHaveLength(EDGE.length);
    expect(WELD_EDGE_TABLE.source).toBe('T.O. 1-1A-9 / TM 43-0106 table 2-24');
  });

  test.each(EDGE)('%s in of the thinner sheet: as printed', (printed, t, edge) => {
    const row = WELD_EDGE_TABLE.rows[EDGE.findIndex(([name]) => name === printed)] ?? [];
    expect(row.map((mm) => mm / INCH)).toEqual([expect.closeTo(t, 12), expect.closeTo(edge, 12)]);
  });
});

describe('the row for a thickness', () => {
  const of = (rows: readonly { readonly thickness: number }[], t: number) =>
    rowFor(rows, t, (r) => r.thickness).thickness;

  test('between two rows the thicker holds', () => {
    expect(of(TABLE_B.rows, 1.1)).toBe(1.25);
    expect(of(TABLE_B.rows, 0.3)).toBe(0.5);
    expect(of(TABLE_A.rows, 1.0)).toBeCloseTo(0.04 * INCH, 12);
  });

  test('thinner than the first row: the first holds; thicker than the last: the last', () => {
    expect(of(TABLE_B.rows, 0.1)).toBe(0.25);
    expect(of(TABLE_B.rows, 4)).toBe(3.2);
  });

  test('a sheet of 0.032 in counts as 0.8 mm and 0.040 in as 1 mm: names of one sheet a hair apart', () => {
    expect(of(TABLE_B.rows, 0.04 * INCH)).toBe(1);
    expect(of(TABLE_B.rows, 1.03)).toBe(1.25);
  });

  test('pitch and overlap never shrink from row to row', () => {
    for (const { rows } of SPOT_WELD_TABLES)
      for (const [i, row] of rows.entries()) {
        const before = rows[i - 1];
        if (before === undefined) continue;
        expect(row.thickness).toBeGreaterThan(before.thickness);
        expect(row.pitch).toBeGreaterThan(before.pitch);
        expect(row.overlap).toBeGreaterThanOrEqual(before.overlap);
      }
  });
});
