import { JobError } from '../errors/problem.js';
import type { AnyFamily } from '../families/family.js';
import type { Unit } from '../units/length.js';
import { atOnce } from '../units/pieces.js';
import type { BendingInput, ParamsInput, StockInput } from './input.js';
import { type PartPlan, plannedParts } from './plan-parts.js';
import { readerOf } from './reader.js';

/** The sheet of a part without a job, and the unit of lengths that do not carry their own, mm by default. */
export type PartSheet = StockInput & { readonly units?: Unit; readonly bending?: BendingInput };

/**
 * Make one part without a job: built, laid flat, formed and verified. Lengths as in a job.
 * @param sheet its metal with thickness or gauge, and its bend rule; k-factor by the metal if left out
 * @throws JobError for a part that cannot be read or cannot exist, with the size that would work; paths are the
 * parameters' own, `['hem', 'length']`
 */
export function makePart<F extends AnyFamily>(
  family: F,
  params: ParamsInput<F>,
  { units = 'mm', bending, ...stock }: PartSheet,
): PartPlan {
  const part = { ...params, name: 'part', family: family.name };
  const head = bending === undefined ? { units, stock } : { units, stock, bending };
  try {
    const job = readerOf([family])({ ...head, parts: [part] });
    return atOnce(plannedParts(job, {}))[0] as PartPlan;
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    throw new JobError(error.problems.map(({ part: _, ...p }) => ({ ...p, path: withoutPart(p.path) })));
  }
}

const withoutPart = (path: JobError['problems'][number]['path']) =>
  path[0] === 'parts' ? path.slice(2) : path;
