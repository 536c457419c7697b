import type { AnyFamily } from '../families/family.js';
import { FAMILIES } from '../families/index.js';
import type { JobHead, JobInput, JointInput, ParamsInput, PartHead } from './input.js';
import type { Job } from './job.js';
import { jobReader } from './job-reader.js';
import { type JobPlan, planJob } from './plan.js';
import type { JobContext } from './read.js';
import type { OwnTables } from './tables.js';

/** A piece of a named part: its name, or with a number where there are several. */
type Piece<N extends string> = N | `${N}-${number}`;

/** A joint whose ends are sites of the parts there are. */
export type JointOf<N extends string> = JointInput & {
  readonly from: `${Piece<N>}.${string}`;
  readonly to: `${Piece<N>}.${string}`;
};

/** A job as it grows; every step gives another one and leaves this as it is. `N` are the names of its parts. */
export interface JobBuilder<N extends string = never> {
  /** The job as data, ready to be written as JSON or YAML. */
  readonly data: JobInput<AnyFamily>;
  /** With another part of a family, a built-in one or one of your own. */
  part<const M extends string, F extends AnyFamily>(
    name: M,
    family: F,
    params: ParamsInput<F> & Omit<PartHead, 'name'>,
  ): JobBuilder<N | M>;
  /** With another joint; it is called `joint-1`, `joint-2` … if it has no name. */
  joint(joint: Omit<JointOf<N>, 'name'> & Partial<Pick<JointInput, 'name'>>): JobBuilder<N>;
  /** Read and checked. @throws JobError as `readJob` does */
  read(context?: JobContext): Job;
  /** Read, computed and verified. @throws JobError as `planJob` does */
  plan(): JobPlan;
}

/**
 * Write a job in a script, every name and size checked as it is typed:
 * `job({ units: 'mm', stock }).part('tray', openBox, { length: 300, width: 200, height: 50 }).plan()`.
 * @param own materials, bend rules, fasteners and bought parts that it may name, as `jobReader` takes them
 */
export function job(head: JobHead, own: OwnTables = {}): JobBuilder {
  return builder({ ...head, parts: [], joints: [] }, FAMILIES, own);
}

function builder<N extends string>(
  data: JobInput<AnyFamily> & { readonly joints: readonly JointInput[] },
  families: readonly AnyFamily[],
  own: OwnTables,
): JobBuilder<N> {
  const read = (context?: JobContext) => jobReader(families, own)(data, context);
  return {
    data,
    part: (name, family, params) => {
      const known = families.some((f) => f.name === family.name);
      const parts = [...data.parts, { ...params, name, family: family.name }];
      return builder({ ...data, parts }, known ? families : [...families, family], own);
    },
    joint: (joint) => {
      const { name = `joint-${data.joints.length + 1}` } = joint;
      return builder({ ...data, joints: [...data.joints, { ...joint, name }] }, families, own);
    },
    read,
    plan: () => planJob(read()),
  };
}
