import { type JobPlan, MATERIALS, type Material } from '@tinwright/core';

/** Metals that stock may be of: those of the parts of jobs, which may bring their own, then all others. */
export const materialsOf = (plans: readonly JobPlan[]): readonly Material[] => [
  ...plans.flatMap((p) => p.parts.map((part) => part.material)),
  ...MATERIALS,
];
