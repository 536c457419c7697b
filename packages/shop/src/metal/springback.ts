import { frozen, stripOf } from '@tinwright/core/internal';
import type { StripRow } from '../machines/strip-row.js';

/**
 * Springback factor k_R = angle after / angle set, by inside radius over thickness.
 * Source: German handbook table, rows as copied on scribd 401383818; header of the columns from memory.
 */
export interface SpringbackRow {
  /** As the table calls the metal. */
  readonly metal: string;
  /** Materials of ours it is taken for. */
  readonly materials: readonly string[];
  readonly factors: readonly (number | null)[];
}

/** Inside radius over thickness of the columns. From memory. */
export const SPRINGBACK_RATIOS: readonly number[] = frozen([1, 1.6, 2.5, 4, 6.3, 10, 16, 25, 40, 63, 100]);

const row = (metal: string, materials: readonly string[], factors: readonly (number | null)[]) => ({
  metal,
  materials,
  factors,
});

/** Rows of the springback table; a column without a value is null. */
export const SPRINGBACK_TABLE: readonly SpringbackRow[] = frozen([
  row('DC04', [], [0.99, 0.99, 0.99, 0.98, 0.97, 0.97, 0.96, 0.94, 0.91, 0.87, 0.83]),
  row(
    'DC01',
    ['mild-steel', 'galvanised-steel', 'tinplate'],
    [0.99, 0.99, 0.99, 0.97, 0.96, 0.96, 0.93, 0.9, 0.85, 0.77, 0.66],
  ),
  row(
    'X12CrNi18-8',
    ['stainless-304', 'stainless-430'],
    [0.99, 0.98, 0.97, 0.95, 0.93, 0.89, 0.84, 0.76, 0.63, null, null],
  ),
  row('E-Cu-R20', ['copper'], [0.98, 0.97, 0.97, 0.96, 0.95, 0.93, 0.9, 0.85, 0.79, 0.72, 0.6]),
  row('CuZn33-R29', ['brass'], [0.97, 0.97, 0.96, 0.95, 0.94, 0.93, 0.89, 0.86, 0.83, 0.77, 0.73]),
  row(
    'EN AW-Al99.0',
    ['aluminium-1050-h14', 'aluminium-3003-h14'],
    [0.99, 0.99, 0.99, 0.99, 0.98, 0.98, 0.97, 0.97, 0.96, 0.95, 0.93],
  ),
  row('AlCuMg1', [], [0.98, 0.98, 0.98, 0.98, 0.97, 0.97, 0.96, 0.95, 0.93, 0.91, 0.87]),
  row(
    'AlSiMgMn',
    ['aluminium-5052-h32', 'aluminium-6061-t6'],
    [0.98, 0.98, 0.97, 0.96, 0.95, 0.93, 0.9, 0.86, 0.82, 0.76, 0.72],
  ),
]);

/** A factor with where it comes from. */
export interface Springback {
  readonly factor: number;
  readonly source: string;
}

/**
 * Springback factor of a material by interpolation in the logarithm of R/T; under the first column its value, past the
 * last known one that. The table takes the nearest metal it has; wear-hardening stainless opens more than it says.
 * @param ratio inside radius over thickness, from 0
 */
export function springbackFactor(material: string, ratio: number): Springback {
  const found = SPRINGBACK_TABLE.find((r) => r.materials.includes(material));
  if (found === undefined) return { factor: 0.98, source: 'no table for this metal; judgement' };
  const points = SPRINGBACK_RATIOS.flatMap((r, i) => {
    const factor = found.factors[i];
    return factor === null || factor === undefined ? [] : [{ r, factor }];
  });
  const source = `handbook springback table, ${found.metal} (rows as copied, columns from memory)`;
  const next = points.findIndex((p) => p.r >= ratio);
  const [first, last] = [points[0], points.at(-1)];
  if (next === 0 || first === undefined || last === undefined) return { factor: first?.factor ?? 1, source };
  if (next < 0) return { factor: last.factor, source };
  const [a, b] = [points[next - 1], points[next]] as [(typeof points)[number], (typeof points)[number]];
  const t = Math.log(ratio / a.r) / Math.log(b.r / a.r);
  return { factor: a.factor + (b.factor - a.factor) * t, source };
}

/** Springback of one sheet, by inside radius, mm. */
export type SheetSpringback = (insideRadius: number) => Springback;

/** As strips of the shop's own metal gave it, where a row measured it; else by the table. @param thickness mm */
export function springbackOf(
  strips: readonly StripRow[],
  material: string,
  thickness: number,
): SheetSpringback {
  return (insideRadius) => {
    const row = stripOf(strips, material, { thickness, insideRadius });
    if (row === undefined || row.springback === null)
      return springbackFactor(material, insideRadius / thickness);
    return { factor: 90 / (90 + row.springback), source: `test strip ${row.name} in the shop file` };
  };
}

/** Angle to bend to, degrees, so that `angle` is left. */
export const setAngle = (angle: number, factor: number): number => angle / factor;

/**
 * Ratio of the radius under load to the radius after, 4x³ − 3x + 1 with x = Ri·Y/(E·T).
 * Source: Kalpakjian and Schmid; MIT 2.008. Any one unit of length and of stress.
 */
export function radiusRatio(
  insideRadius: number,
  thickness: number,
  yieldStress: number,
  modulus: number,
): number {
  const x = (insideRadius * yieldStress) / (modulus * thickness);
  return 4 * x ** 3 - 3 * x + 1;
}
