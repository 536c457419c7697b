import { sides } from './exact-sides.js';
import type { ShearLimits } from './limits.js';
import type { Area, CutTree, SheetPlan } from './shear-plan.js';

/** Has a plan a cut longer than the shear makes? Tables of patterns know lengths of blanks, not of what is left beside them. */
export function tooLong(sheets: readonly SheetPlan[], kerf: number, { length }: ShearLimits): boolean {
  const walk = (tree: CutTree | null, area: Area): boolean => {
    if (tree === null) return false;
    if ((tree.axis === 'x' ? area.h : area.w) > length + 1e-6) return true;
    const [low, high] = sides(tree, area, kerf);
    return walk(tree.low, low) || walk(tree.high, high);
  };
  return sheets.some(({ stock, cuts }) => walk(cuts, { x: 0, y: 0, w: stock.x, h: stock.y }));
}
