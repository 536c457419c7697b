import type { JobPlan } from '@tinwright/core';
import type { ShearAbility } from '@tinwright/cutting/internal';
import type { Shop } from '@tinwright/shop';
import { thicknessLimit } from '@tinwright/shop/internal';
import { materialsOf } from './materials-of.js';

/** What the shear of a shop can do for jobs; everything where there is no shop, or it has no shear. */
export function shearAbility(shop: Shop | null, plans: readonly JobPlan[]): ShearAbility {
  const far = Number.POSITIVE_INFINITY;
  const machine = shop?.shear ?? null;
  if (machine === null)
    return { limits: { length: far, stop: far }, reach: { length: far, thickest: () => far } };
  const known = materialsOf(plans);
  const thickest = (name: string) => {
    const material = known.find((m) => m.name === name);
    return material === undefined ? far : thicknessLimit(machine.capacity, material).thickness;
  };
  const { length, rearStop } = machine;
  return { limits: { length, stop: rearStop ?? far }, reach: { length, thickest } };
}
