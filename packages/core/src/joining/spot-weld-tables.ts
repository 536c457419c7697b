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

const IN = 25.4;
type InchRow = readonly [t: number, electrode: number, nugget: number, pitch: number, overlap: number];

// SAE 1010, single impulse: thickness, body D, fused zone Dw, pitch S, overlap L, inches as printed
const TABLE_A: readonly InchRow[] = [
  [0.01, 1 / 2, 0.113, 1 / 4, 3 / 8],
  [0.021, 1 / 2, 0.139, 3 / 8, 7 / 16],
  [0.031, 1 / 2, 0.161, 1 / 2, 7 / 16],
  [0.04, 5 / 8, 0.181, 3 / 4, 1 / 2],
  [0.05, 5 / 8, 0.21, 7 / 8, 9 / 16],
  [0.062, 5 / 8, 0.231, 1, 5 / 8],
  [0.078, 5 / 8, 0.268, 1 + 1 / 8, 11 / 16],
  [0.094, 5 / 8, 0.304, 1 + 1 / 4, 3 / 4],
  [0.109, 7 / 8, 0.338, 1 + 5 / 16, 13 / 16],
  [0.125, 7 / 8, 0.375, 1 + 1 / 2, 7 / 8],
];

type MetricRow = readonly [t: number, pitch: number, overlap: number, electrode: number, nugget: number];

const TABLE_B: readonly MetricRow[] = [
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

/** Low-carbon steel schedules. */
export const SPOT_WELD_TABLES: readonly [SpotWeldTable, SpotWeldTable] = [
  {
    name: 'table A',
    source: 'optimum conditions for SAE 1010, welding-equipment data sheet, docslib.org/doc/9660685',
    rows: TABLE_A.map(([t, electrode, nugget, pitch, overlap]) => ({
      thickness: t * IN,
      pitch: pitch * IN,
      overlap: overlap * IN,
      electrode: electrode * IN,
      nugget: nugget * IN,
    })),
  },
  {
    name: 'table B',
    source: 'class A schedule of a pedestal spot-welder instruction manual, table 8.1',
    rows: TABLE_B.map(([thickness, pitch, overlap, electrode, nugget]) => ({
      thickness,
      pitch,
      overlap,
      electrode,
      nugget,
    })),
  },
];

/** Least distance of a weld's centre from an edge, by the thinner sheet: thickness and distance, mm. */
export const WELD_EDGE_TABLE: {
  readonly source: string;
  readonly rows: readonly (readonly [number, number])[];
} = {
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
  ).map(([t, e]) => [t * IN, e * IN]),
};

/** The row of the next thicker sheet that a table has; the last row beyond its end. A hair of rounding is forgiven. */
export function rowFor<Row>(rows: readonly Row[], thickness: number, of: (row: Row) => number): Row {
  return rows.find((r) => of(r) >= thickness * (1 - ROUNDING)) ?? (rows.at(-1) as Row);
}

const ROUNDING = 0.02; // gauge and metric names of the same sheet differ by as much
