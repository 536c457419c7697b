/** Least inside radius as a function of thickness, with its source. */
export interface RadiusRule {
  /** @param thickness mm @returns least inside radius, mm */
  readonly at: (thickness: number) => number;
  readonly source: string;
}

/** A fixed multiple of the thickness. */
export function timesThickness(factor: number, source: string): RadiusRule {
  return { at: (t) => factor * t, source };
}

type SteelRow = readonly [upTo: number, rm390: number, rm490: number, rm640: number];

/**
 * DIN 6935 (1975-10), steel, bends up to 120° across the rolling direction, mm.
 * Rows: thickness up to and including; columns: tensile strength up to 390, 490, 640 N/mm².
 */
export const DIN_6935_RADII: readonly SteelRow[] = [
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

/** Steel by DIN 6935; beyond the table's 8 mm the last row's ratio to the thickness goes on. */
export function din6935Radius(tensile: 390 | 490 | 640): RadiusRule {
  const column = ({ 390: 1, 490: 2, 640: 3 } as const)[tensile];
  return {
    at: (t) => {
      const row = DIN_6935_RADII.find(([upTo]) => t <= upTo + 1e-9);
      return row === undefined ? ((DIN_6935_RADII.at(-1) as SteelRow)[column] / 8) * t : row[column];
    },
    source: 'DIN 6935 (1975-10), conservative: thin mild steel is often bent at R ≤ T and hemmed flat',
  };
}

/** Inside radius in thicknesses for 90° cold bends, at 1/64, 1/32, 1/16, 1/8, 3/16 and 1/4 in. */
export const ALUMINIUM_RADII: Readonly<Record<string, readonly number[]>> = {
  '1100-H14': [0, 0, 0, 1, 1, 1.5],
  '3003-H14': [0, 0, 0, 1, 1, 1.5],
  '5052-H32': [0, 0, 1, 1.5, 1.5, 1.5],
  '6061-T6': [1, 1, 1.5, 2.5, 3, 3.5],
};

const STEPS_MM: readonly number[] = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 3 / 16, 1 / 4].map((i) => i * 25.4);

/** Aluminium by the Design Manual's table; between two thicknesses the thicker row holds. */
export function aluminiumRadius(temper: keyof typeof ALUMINIUM_RADII & string): RadiusRule {
  const row = ALUMINIUM_RADII[temper] as readonly number[];
  return {
    at: (t) => {
      const i = STEPS_MM.findIndex((s) => t <= s * 1.02); // gauges near a nominal step belong to it
      return (row[i === -1 ? row.length - 1 : i] as number) * t;
    },
    source:
      temper === '6061-T6'
        ? 'bjg-design.com shbend table, 90° cold bends'
        : `Aluminum Design Manual 2005 table 3-1 p. VII-78, row ${temper}, 90° cold bends`,
  };
}
