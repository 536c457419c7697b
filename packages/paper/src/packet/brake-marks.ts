import type { PartPlan } from '@tinwright/core';
import type { BrakeMarks } from '../plan/options.js';
import type { Making } from './making.js';

/** Sight lines and angles to set of the brake, where a shop is given and an order was found for it. */
export function brakeMarks({ name }: PartPlan, { assumed, sequences }: Making): BrakeMarks {
  const steps = assumed ? [] : (sequences.get(name)?.steps ?? []);
  const set = steps.filter((s) => s.machine === 'brake' && (s.action === 'bend' || s.action === 'fold'));
  return {
    sights: set.flatMap((s) => (s.sight ?? []).map((line, i) => ({ bend: s.bends[i] as string, line }))),
    setAngles: Object.fromEntries(
      set.flatMap((s) => s.bends.flatMap((b) => (s.setAngle === null ? [] : [[b, s.setAngle] as const]))),
    ),
  };
}
