import type { JobPlan } from '@tinwright/core';
import { type Inputs, refuseInputsIn } from './inputs.js';
import { refuseOtherJob, type WrittenWhere } from './one-job.js';
import type { OwnLists } from './own-lists.js';

/** A set of files that is made of a job, where it goes, and what was read for it. */
export interface JobSet extends WrittenWhere {
  readonly plan: Pick<JobPlan, 'job' | 'parts'>;
  readonly inputs: Inputs;
}

/**
 * Whether it may stand where it goes: asked before work that takes long, and again when it is written.
 * @throws WriteError where files of another job stay beside it, or what it is made of would be replaced
 */
export async function refuseJobSet({ plan, inputs, ...where }: JobSet, standing: OwnLists): Promise<void> {
  refuseOtherJob(where, standing, plan);
  await refuseInputsIn(inputs, where.out, standing.get(where.list));
}
