import type { PartPlan } from '@tinwright/core';
import type { BendPrint } from '@tinwright/words';
import type { Dims } from './plan/dims.js';
import { bendNumber } from './plan/features.js';

/** Sizes as a plan prints them; bends by their number on the plan and their name on pictures. */
export const bendPrint = ({ flat }: Pick<PartPlan, 'flat'>, dims: Dims): BendPrint => ({
  size: (mm) => `${dims.text(mm)} ${dims.unit}`,
  fine: (mm) => `${dims.fine(mm)} ${dims.unit}`,
  angle: dims.angle,
  bend: (id) => `${bendNumber(flat.bends.findIndex((b) => b.id === id))} ${id}`,
});
