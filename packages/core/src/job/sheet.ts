import type { RuleKind } from '../bending/kind.js';
import type { StripBend } from '../bending/strip-bend.js';
import { fail, within } from '../errors/problem.js';
import type { Sheet } from '../fold/draft/tree.js';
import { gaugedThickness } from '../schema/gauge.js';
import type { MetalRow, RackRows } from '../schema/rack-rows.js';
import type { Material } from '../stock/materials.js';
import { withMethods } from '../units/with-methods.js';
import type { BendingData, JobStockData, StockData } from './schema.js';
import { type Tables, tablesWith } from './tables.js';

/** What a part is made from. */
export interface SheetMetal {
  readonly material: Material;
  readonly sheet: Sheet;
}

/**
 * Material and sheet as a job names them; the inside radius is one thickness when not given. Only for data that went
 * through the schemas.
 * @param strips rows of the shop that `rule: test-strip` looks in
 * @throws JobError with paths within `stock:`, see `thicknessOf`
 */
export function sheetOf(
  stock: StockData,
  bending: BendingData,
  strips: readonly StripBend[],
  { materials, rules }: Tables = tablesWith(),
): SheetMetal {
  const material = materials.find((m) => m.name === stock.material) as Material;
  const thickness = thicknessOf(stock, material);
  const kind = rules.find((k) => k.name === bending.rule) as RuleKind;
  const { terms, forms, doubt = () => null, ...said } = kind.make(bending, material, strips);
  const made = { kind: kind.name, constants: bending, strips };
  const sheet = { thickness, insideRadius: bending.insideRadius ?? thickness };
  return {
    material,
    sheet: { ...sheet, rule: withMethods({ ...said, made }, { terms, doubt, ...(forms && { forms }) }) },
  };
}

/** Sheets and offcuts of a job, of its own metal where a row names none; null where it names no sheets or offcuts. */
export function jobRack(stock: JobStockData, { materials }: Tables): RackRows | null {
  const { sheets, offcuts, trim, kerf, leastOffcut } = stock;
  if (sheets.length === 0 && offcuts.length === 0) return null;
  const material = materials.find((m) => m.name === stock.material) as Material;
  const thick = () => within(['stock'], () => thicknessOf(stock, material));
  const ofJob = <R extends MetalRow>(row: R): R => ({
    ...row,
    material: row.material ?? stock.material,
    thickness: row.thickness ?? thick(),
  });
  return { sheets: sheets.map(ofJob), offcuts: offcuts.map(ofJob), trim, kerf, leastOffcut };
}

/**
 * Thickness of the stock, mm: given, or from a gauge in the material's system.
 * @throws JobError when there is none, both, a gauge without a system, or one the system does not have
 */
function thicknessOf({ thickness, gauge }: StockData, material: Material): number {
  if (thickness !== undefined && gauge !== undefined)
    return fail('thickness-twice', ['gauge'], 'thickness and gauge given', 'Give one of the two');
  if (thickness !== undefined) return thickness;
  if (gauge === undefined)
    return fail(
      'thickness-missing',
      [],
      'no thickness',
      'Give thickness, or gauge with a material that has gauges',
    );
  return gaugedThickness(gauge, material);
}
