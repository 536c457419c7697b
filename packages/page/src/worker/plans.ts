import {
  FAMILIES,
  type Job,
  JobError,
  type JobPlan,
  type JobReader,
  jobReader,
  MM_PER_INCH,
  parseLength,
  planJob,
} from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import {
  form,
  LONGEST,
  nearestSize,
  passing,
  planPart,
  stepOf,
  unfold,
  valueAt,
  withValue,
} from '@tinwright/core/internal';
import type { Answers, JobPath, ProblemView, Quick } from '../protocol.js';
import { quickView } from './views.js';

/** Reads and plans jobs for a screen; keeps its schemas and the last plan. */
export interface Planner {
  readonly plan: (data: unknown) => JobPlan;
  /** One part's views; null where it cannot be. */
  readonly quick: (data: unknown, name: string) => Quick | null;
  readonly mend: (data: unknown, path: JobPath) => Answers['mend'];
}

export function planner(): Planner {
  const read = jobReader(FAMILIES, { hardware });
  let last: { readonly data: unknown; readonly plan: JobPlan } | null = null;
  const plan = (data: unknown): JobPlan => {
    const text = JSON.stringify(data);
    if (last?.data !== text) last = { data: text, plan: planJob(read(data)) };
    return last.plan;
  };
  return {
    plan,
    quick: (data, name) => {
      const part = attempt(() => read(data))?.parts.find((p) => p.name === name);
      if (part === undefined) return null;
      return attempt(() => {
        const built = part.family.part(part.params, part.sheet);
        return quickView({ name, flat: unfold(built), formed: form(built) });
      });
    },
    mend: (data, path) => mend(read, data, path),
  };
}

/** The nearest number in place of the one at `path` with which the job's parts can all be. */
function mend(read: JobReader, data: unknown, path: JobPath): Answers['mend'] {
  const units = (data as { units?: unknown }).units === 'in' ? 'in' : 'mm';
  const given = valueAt(data, path);
  const parsed = typeof given === 'number' || typeof given === 'string' ? parseLength(given, units) : null;
  if (parsed === null || !parsed.ok) return null;
  const per = units === 'in' ? MM_PER_INCH : 1;
  const digits = units === 'in' ? 4 : 2;
  const written = (mm: number) => Number((mm / per).toFixed(digits));
  const works = (mm: number) => {
    const job = attempt(() => read(withValue(data, path, written(mm))));
    return job !== null && builds(job, path);
  };
  const found = nearestSize(parsed.mm, passing(works), { step: stepOf(units), most: LONGEST });
  return found === null ? null : { path, value: written(found.found) };
}

/** True when the part a path leads to, or every part, can be built. */
const builds = ({ parts }: Job, [head, index]: JobPath): boolean =>
  parts.filter((_, i) => head !== 'parts' || i === index).every((p) => attempt(() => planPart(p)) !== null);

/** The result, or null where a job cannot be read or be. */
export function attempt<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof JobError) return null;
    throw error;
  }
}

/** The answer, or the problems of a job that cannot be. */
export function orProblems<T>(work: () => T): T | { readonly problems: readonly ProblemView[] } {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    return {
      problems: error.problems.map(({ path, part = '', message, fix }) => ({ path, part, message, fix })),
    };
  }
}
