import type { FlatBend, Material } from '@tinwright/core';
import { thicknessLimit } from '../../machines/capacity.js';
import type { Shop } from '../../machines/shop.js';
import { lengthOf } from '../geometry/panels.js';

/** True when a bend may be made by hand in the shop's vise: as long as its jaws, no thicker than they take. */
export function viseTakes({ vise }: Shop, bend: FlatBend, thickness: number, material: Material): boolean {
  if (vise === null || bend.hem === 'wired' || lengthOf(bend) > vise.jaws) return false;
  return thickness <= thicknessLimit(vise.capacity, material).thickness * 1.001;
}
