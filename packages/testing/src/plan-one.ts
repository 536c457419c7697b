import { type AnyFamily, JobError, jobReader, type PartPlan, type Problem, planJob } from '@tinwright/core';

/** Parameters as a job holds them. */
export type Params = Readonly<Record<string, unknown>>;

const STOCK = { material: 'mild-steel', thickness: 1 };

/**
 * Plan a job of one part of a family, called `part`, in 1 mm mild steel unless `job` says otherwise. The data is frozen
 * first: who writes to it, throws.
 * @throws JobError for what cannot be read or made
 */
export function planOne(family: AnyFamily, params: Params, job: Params = {}): PartPlan {
  const parts = [{ name: 'part', family: family.name, ...params }];
  const data = deepFreeze({ units: 'mm', stock: STOCK, ...job, parts });
  return planJob(jobReader([family])(data)).parts[0] as PartPlan;
}

/** What is said against such a part; nothing where it can be made. */
export function problemsOf(family: AnyFamily, params: Params, job: Params = {}): readonly Problem[] {
  try {
    planOne(family, params, job);
    return [];
  } catch (error) {
    if (error instanceof JobError) return error.problems;
    throw error;
  }
}

function deepFreeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null) return value;
  for (const inner of Object.values(value)) deepFreeze(inner);
  return Object.freeze(value);
}
