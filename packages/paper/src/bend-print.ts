import type { PartPlan, Unit } from '@tinwright/core';
import { sayIn } from '@tinwright/core/internal';
import type { BendPrint } from '@tinwright/words';
import type { Dims } from './page/dims.js';
import { bendNumber } from './pattern/features.js';

/**
 * Sizes as a plan prints them; bends by their number on the plan and their name on pictures.
 * @param tools the unit of the shop, which its tools are named in
 */
export const bendPrint = (
  { flat }: Pick<PartPlan, 'flat'>,
  dims: Dims,
  tools: Unit = dims.unit,
): BendPrint => ({
  ...(tools !== dims.unit && { piece: (mm: number) => dims.own(sayIn(tools).size(mm)) }),
  size: (mm) => `${dims.text(mm)} ${dims.unit}`,
  fine: (mm) => `${dims.fine(mm)} ${dims.unit}`,
  angle: dims.angle,
  bend: (id) => `${bendNumber(flat.bends.findIndex((b) => b.id === id))} ${id}`,
});
