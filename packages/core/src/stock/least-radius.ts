import { frozen } from '../units/frozen.js';
import { MM_PER_INCH } from '../units/length.js';

/** Least inside radius of a sheet up to a thickness: a radius in mm, or a multiple of the thickness. */
export type RadiusRow =
  | { readonly upTo: number; readonly radius: number }
  | { readonly upTo: number; readonly times: number };

/** Least inside radius by thickness, with its source: plain data, `leastRadiusOf` reads it. */
export interface RadiusRule {
  readonly source: string;
  /** By thickness, thinnest first, mm. */
  readonly rows: readonly RadiusRow[];
  /** Thicker than the last row: this many thicknesses. */
  readonly beyond: number;
  /** What a bend through more than 120° takes: the same row, or the next thicker one. */
  readonly over120?: 'same' | 'next';
}

/**
 * The least inside radius of one bend, mm.
 * @param thickness mm
 * @param angle bent through, degrees
 */
export function leastRadiusOf({ rows, beyond, over120 }: RadiusRule, thickness: number, angle = 90): number {
  const i = rows.findIndex(({ upTo }) => thickness <= upTo + 1e-9);
  const steps = over120 === 'next' && angle > 120 ? 1 : 0;
  const row = rows[(i < 0 ? rows.length : i) + steps];
  if (row === undefined) return beyond * (thickness + steps); // past the table a step is 1 mm
  return 'radius' in row ? row.radius : row.times * thickness;
}

/** A fixed multiple of the thickness. */
export function timesThickness(factor: number, source: string): RadiusRule {
  return frozen({ source, rows: [], beyond: factor });
}

/** Gauges near a nominal step belong to it. */
const NEAR = 1.02;

type SteelRow = readonly [upTo: number, rm390: number, rm490: number, rm640: number];

/**
 * DIN 6935 (1975-10), steel, bends up to 120° across the rolling direction, mm; over 120° the next thicker row holds.
 * Rows: thickness up to and including; columns: tensile strength up to 390, 490, 640 N/mm².
 */
const DIN_6935_RADII: readonly SteelRow[] = [
  [1, 1, 1.2, 1.6],
  [1.5, 1.6, 2, 2.5],
  [2.5, 2.5, 3, 4],
  [3, 3, 4, 5],
  [4, 5, 5, 6],
  [5, 6, 8, 8],
  [6, 8, 10, 10],
  [7, 10, 12, 12],
  [8, 12, 16, 16],
];

/** Steel by DIN 6935; beyond the table's last row its ratio to the thickness goes on, in steps of 1 mm over 120°. */
export function din6935Radius(tensile: 390 | 490 | 640): RadiusRule {
  const column = ({ 390: 1, 490: 2, 640: 3 } as const)[tensile];
  const source = 'DIN 6935 (1975-10), conservative: thin mild steel is often bent at R ≤ T and hemmed flat';
  const last = DIN_6935_RADII.at(-1) as SteelRow;
  const rows = DIN_6935_RADII.map((row) => ({ upTo: row[0], radius: row[column] }));
  return frozen({ source, rows, beyond: last[column] / last[0], over120: 'next' });
}

/** Rows of least inside radius by thickness, inches as printed: the next thicker row holds, the last one's ratio beyond. */
type InchRows = readonly (readonly [thickness: number, radius: number])[];

/** Aircraft sheet, as far as the tables that were seen go. */
const AIRCRAFT_RADII: Readonly<Record<string, { readonly rows: InchRows; readonly source: string }>> = {
  '304': {
    rows: [
      [0.04, 0.094],
      [0.063, 0.125],
      [0.09, 0.188],
    ],
    source: 'aircraft-type minimums, bjg-design.com shbend table, row 304',
  },
  '6061-T6': {
    rows: [
      [0.063, 0.188],
      [0.125, 0.5],
    ],
    source: 'aircraft-type minimums, bjg-design.com shbend table, row 6061-T6',
  },
  '5052': {
    rows: [
      [0.032, 0],
      [0.064, 1.5 * 0.064],
      [0.128, 2 * 0.128],
    ],
    source: 'AC 43.13-1B table 4-6, row 5052-H34, the upper end; from memory',
  },
};

/** Least radius of aircraft sheet; for profiles that take the stricter of two sources. */
export function aircraftRadius(row: keyof typeof AIRCRAFT_RADII & string): RadiusRule {
  const { rows, source } = AIRCRAFT_RADII[row] as (typeof AIRCRAFT_RADII)[string];
  const [thickness, radius] = rows.at(-1) as InchRows[number];
  const inMm = rows.map(([upTo, r]) => ({ upTo: NEAR * MM_PER_INCH * upTo, radius: MM_PER_INCH * r }));
  return frozen({ source, rows: inMm, beyond: radius / thickness });
}

/** Inside radius in thicknesses for 90° cold bends, at 1/64, 1/32, 1/16, 1/8, 3/16 and 1/4 in. */
const ALUMINIUM_RADII: Readonly<Record<string, readonly number[]>> = {
  '1100-H14': [0, 0, 0, 1, 1, 1.5],
  '3003-H14': [0, 0, 0, 1, 1, 1.5],
  '5052-H32': [0, 0, 1, 1.5, 1.5, 1.5],
  '6061-T6': [1, 1, 1.5, 2.5, 3, 3.5],
};

const STEPS_MM: readonly number[] = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 3 / 16, 1 / 4].map(
  (i) => i * MM_PER_INCH,
);

/** Aluminium by the Design Manual's table; between two thicknesses the thicker row holds. */
export function aluminiumRadius(temper: keyof typeof ALUMINIUM_RADII & string): RadiusRule {
  const row = ALUMINIUM_RADII[temper] as readonly number[];
  const source =
    temper === '6061-T6'
      ? 'bjg-design.com shbend table, 90° cold bends'
      : `Aluminum Design Manual 2005 table 3-1 p. VII-78, row ${temper}, 90° cold bends`;
  const rows = row.map((times, i) => ({ upTo: NEAR * (STEPS_MM[i] as number), times }));
  return frozen({ source, rows, beyond: row.at(-1) as number });
}
