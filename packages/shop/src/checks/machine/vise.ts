import type { FlatBend } from '@tinwright/core';
import { thicknessLimit } from '../../machines/capacity.js';
import type { Shop } from '../../machines/shop.js';
import type { Subject } from '../check.js';
import { lengthOf } from '../geometry/panels.js';
import { panelNamed, reachFrom, sidesOf } from '../geometry/sides.js';

/**
 * True when a bend may be made by hand in the shop's vise: as long as its jaws, no thicker than they take, with a side
 * that goes between them. What stands beside the line by then is another matter.
 */
export function viseTakes({ part, sheet, material }: Subject, { vise }: Shop, bend: FlatBend): boolean {
  if (vise === null || bend.hem === 'wired' || lengthOf(bend) > vise.jaws) return false;
  if (sheet.thickness > thicknessLimit(vise.capacity, material).thickness * 1.001) return false;
  return [bend.id, bend.parent].some((id) => {
    const side = sidesOf(part, id).find((s) => s.bend === bend.id);
    return side !== undefined && reachFrom(panelNamed(part, id), side) <= vise.depth;
  });
}
