import { frozen } from '../units/frozen.js';
import { MM_PER_INCH } from '../units/length.js';

/** One row of a spot-weld schedule. mm but where said; thickness is the thinnest outside sheet. */
export interface SpotWeldRow {
  readonly thickness: number;
  /** Least distance between weld centres in two sheets. */
  readonly pitch: number;
  /** Least overlap of the sheets. */
  readonly overlap: number;
  /** Least diameter of the electrode's body. */
  readonly electrode: number;
  /** Diameter of the fused zone. */
  readonly nugget: number;
}

/** A schedule with its source. */
export interface SpotWeldTable {
  readonly name: string;
  readonly source: string;
  readonly rows: readonly SpotWeldRow[];
}

type Row = readonly [t: number, pitch: number, overlap: number, electrode: number, nugget: number];

// SAE 1010, single impulse: thickness, pitch S, overlap L, body D, fused zone Dw; inches as printed
const TABLE_A: readonly Row[] = [
  [0.01, 1 / 4, 3 / 8, 1 / 2, 0.113],
  [0.021, 3 / 8, 7 / 16, 1 / 2, 0.139],
  [0.031, 1 / 2, 7 / 16, 1 / 2, 0.161],
  [0.04, 3 / 4, 1 / 2, 5 / 8, 0.181],
  [0.05, 7 / 8, 9 / 16, 5 / 8, 0.21],
  [0.062, 1, 5 / 8, 5 / 8, 0.231],
  [0.078, 1 + 1 / 8, 11 / 16, 5 / 8, 0.268],
  [0.094, 1 + 1 / 4, 3 / 4, 5 / 8, 0.304],
  [0.109, 1 + 5 / 16, 13 / 16, 7 / 8, 0.338],
  [0.125, 1 + 1 / 2, 7 / 8, 7 / 8, 0.375],
];

const TABLE_B: readonly Row[] = [
  [0.25, 6, 9.5, 9.5, 3],
  [0.5, 9.5, 11, 9.5, 4],
  [0.75, 12.5, 11, 9.5, 5],
  [1, 19.5, 12.5, 13, 5.5],
  [1.25, 22.5, 15, 13, 6],
  [1.5, 27, 16, 13, 6.5],
  [2, 35, 18, 16, 7.3],
  [2.5, 42, 19, 16, 8.3],
  [2.8, 48, 21, 16, 9],
  [3.2, 50, 23, 22, 10],
];

const rowsOf = (table: readonly Row[], unit: number): readonly SpotWeldRow[] =>
  table.map((row) => {
    const [thickness, pitch, overlap, electrode, nugget] = row.map((v) => v * unit) as unknown as Row;
    return { thickness, pitch, overlap, electrode, nugget };
  });

/** Low-carbon steel schedules. */
export const SPOT_WELD_TABLES: readonly [SpotWeldTable, SpotWeldTable] = frozen([
  {
    name: 'table A',
    source: 'optimum conditions for SAE 1010, welding-equipment data sheet, docslib.org/doc/9660685',
    rows: rowsOf(TABLE_A, MM_PER_INCH),
  },
  {
    name: 'table B',
    source: 'class A schedule of a pedestal spot-welder instruction manual, table 8.1',
    rows: rowsOf(TABLE_B, 1),
  },
]);

/** Least distance of a weld's centre from an edge, by the thinner sheet: thickness and distance, mm. */
export const WELD_EDGE_TABLE: {
  readonly source: string;
  readonly rows: readonly (readonly [number, number])[];
} = frozen({
  source: 'T.O. 1-1A-9 / TM 43-0106 table 2-24',
  rows: (
    [
      [0.036, 1 / 4],
      [0.04, 9 / 32],
      [0.045, 5 / 16],
      [0.05, 5 / 16],
      [0.063, 3 / 8],
      [0.071, 3 / 8],
      [0.08, 13 / 32],
      [0.09, 7 / 16],
      [0.1, 7 / 16],
      [0.125, 9 / 16],
      [0.16, 5 / 8],
    ] as const
  ).map(([t, e]) => [t * MM_PER_INCH, e * MM_PER_INCH]),
});

/** The row of the next thicker sheet that a table has; the last row beyond its end. A hair of rounding is forgiven. */
export function rowFor<Row>(rows: readonly Row[], thickness: number, of: (row: Row) => number): Row {
  return rows.find((r) => of(r) >= thickness * (1 - ROUNDING)) ?? (rows.at(-1) as Row);
}

const ROUNDING = 0.02; // gauge and metric names of the same sheet differ by as much
