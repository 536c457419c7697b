import { type AnyFamily, JobError, jobReader, type PartPlan, type Problem, planJob } from '@tinwright/core';

/** Parameters as a job holds them. */
export type Params = Readonly<Record<string, unknown>>;

const STOCK = { material: 'mild-steel', thickness: 1 };

/** Plans jobs of one part of a family, with one reader for all of them. */
export interface FamilyPlanner {
  /** As `planOne` does. */
  readonly plan: (params: Params, job?: Params) => PartPlan;
  /** What is said against such a part; nothing where it can be made. */
  readonly problems: (params: Params, job?: Params) => readonly Problem[];
}

/** A planner of a family's parts. */
export function plannerOf(family: AnyFamily): FamilyPlanner {
  const read = jobReader([family]);
  const plan: FamilyPlanner['plan'] = (params, job = {}) => {
    const parts = [{ name: 'part', family: family.name, ...params }];
    const data = deepFreeze({ units: 'mm', stock: STOCK, ...job, parts });
    return planJob(read(data)).parts[0] as PartPlan;
  };
  const problems: FamilyPlanner['problems'] = (params, job) => {
    try {
      plan(params, job);
      return [];
    } catch (error) {
      if (error instanceof JobError) return error.problems;
      throw error;
    }
  };
  return { plan, problems };
}

/**
 * Plan a job of one part of a family, called `part`, in 1 mm mild steel unless `job` says otherwise. The data is frozen
 * first: who writes to it, throws.
 * @throws JobError for what cannot be read or made
 */
export const planOne = (family: AnyFamily, params: Params, job: Params = {}): PartPlan =>
  plannerOf(family).plan(params, job);

function deepFreeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null) return value;
  for (const inner of Object.values(value)) deepFreeze(inner);
  return Object.freeze(value);
}
