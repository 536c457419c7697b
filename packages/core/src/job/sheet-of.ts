import type { RuleKind } from '../bending/kind.js';
import { RULE_KINDS } from '../bending/kinds.js';
import type { StripBend } from '../bending/test-strip.js';
import { type Path, within } from '../errors/problem.js';
import type { Sheet } from '../fold/tree.js';
import { MATERIALS, type Material } from '../stock/materials.js';
import type { BendingData, StockData } from './schema.js';
import { thicknessOf } from './thickness.js';

/**
 * The metal and sheet that `stock:` and `bending:` name, as their schemas let them pass.
 * @param path of `stock:`  @param strips rows of the shop that `rule: test-strip` looks in
 * @throws JobError when there is no one thickness
 */
export function sheetOf(
  stock: StockData,
  path: Path,
  bending: BendingData,
  strips: readonly StripBend[],
): { readonly material: Material; readonly sheet: Sheet } {
  const material = MATERIALS.find((m) => m.name === stock.material) as Material;
  const thickness = within(path, () => thicknessOf(stock, material));
  const kind = RULE_KINDS.find((k) => k.name === bending.rule) as RuleKind;
  const rule = kind.make(bending, material, strips);
  return { material, sheet: { thickness, insideRadius: bending.insideRadius ?? thickness, rule } };
}
