import * as z from 'zod/mini';
import { RULE_KINDS } from '../bending/kinds.js';
import { JobError, type Problem } from '../errors/problem.js';
import type { AnyFamily } from '../families/family.js';
import { paramKit } from '../schema/kit.js';
import type { Unit } from '../units/length.js';
import { atOnce } from '../units/pieces.js';
import { explained } from './explained.js';
import type { BendingInput, ParamsInput, StockInput } from './input.js';
import { jobPart } from './job-part.js';
import { parsed } from './parsed.js';
import {
  type BendingData,
  type PartData,
  partSchema,
  partSchemas,
  type StockData,
  unitSchema,
} from './part-schema.js';
import { type PartPlan, plannedParts } from './plan-parts.js';
import { BUILT_IN } from './sheet.js';

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
  const kit = paramKit(units === 'in' ? 'in' : 'mm');
  const schemas = partSchemas(kit, RULE_KINDS);
  const problems: Problem[] = [];
  parsed(unitSchema, units, ['units'], problems);
  const rule = z.optional(schemas.bending);
  const head = {
    stock: parsed(schemas.stock, stock, ['stock'], problems) as StockData,
    bending: parsed(rule, bending, ['bending'], problems) as BendingData | undefined,
  };
  const given = { ...params, name: 'part', family: family.name };
  const read = parsed(partSchema(kit, family, schemas), given, [], problems) as PartData;
  if (problems.length > 0) throw new JobError(problems.map((p) => explained(p, family, p.path)));
  const part = jobPart(read, family, { ...head, cutBy: null, strips: [], tables: BUILT_IN }, []);
  try {
    return atOnce(plannedParts({ parts: [part], units }, {}))[0] as PartPlan;
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    throw new JobError(error.problems.map(({ part: _, ...problem }) => problem));
  }
}
