import type { RuleKind } from '../bending/kind.js';
import { RULE_KINDS } from '../bending/kinds.js';
import type { StripBend } from '../bending/strip-bend.js';
import { fail } from '../errors/problem.js';
import type { Sheet } from '../fold/draft/tree.js';
import { gaugedThickness } from '../schema/gauge.js';
import { MATERIALS, type Material } from '../stock/materials.js';
import { withMethods } from '../units/with-methods.js';
import type { BendingData, StockData } from './part-schema.js';
import type { Tables } from './tables.js';

/** What a part is made from. */
export interface SheetMetal {
  readonly material: Material;
  readonly sheet: Sheet;
}

/** Materials and bend rules that stock and bending may name. */
export type MetalTables = Pick<Tables, 'materials' | 'rules'>;

/** Those that are there without a shop or rows of one's own. */
export const BUILT_IN: MetalTables = { materials: MATERIALS, rules: RULE_KINDS };

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
  { materials, rules }: MetalTables = BUILT_IN,
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

/**
 * Thickness of the stock, mm: given, or from a gauge in the material's system.
 * @throws JobError when there is none, both, a gauge without a system, or one the system does not have
 */
export function thicknessOf({ thickness, gauge }: StockData, material: Material): number {
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
