import { valueAt } from '../advice/values.js';
import { JobError, type Problem, type Refusal, worded } from '../errors/problem.js';
import { wayOf } from '../fold/draft/names.js';
import { cutBack } from '../fold/flat/cut-back.js';
import type { FlatPattern } from '../fold/flat/flat.js';
import { unfold } from '../fold/flat/unfold.js';
import { type Flaw, verifyCut, verifyFlat } from '../fold/flat/verify-flat.js';
import { form } from '../fold/formed/form.js';
import type { Formed } from '../fold/formed/formed.js';
import { verifyForm } from '../fold/formed/verify-form.js';
import type { Part } from '../fold/settle/part.js';
import { atOnce, type Pieces, type StopSignal } from '../units/pieces.js';
import { withAdvice } from './advice.js';
import type { Job, JobPart } from './job.js';

/** A part with both of its views. mm, kg */
export interface PartPlan extends JobPart {
  readonly part: Part;
  readonly flat: FlatPattern;
  readonly formed: Formed;
  /** The part as it seems to have been made: other than the planned one only after measuring. */
  readonly stands: { readonly part: Part; readonly formed: Formed };
  /** Mass of one piece: net flat area × thickness × density. */
  readonly mass: number;
}

/** How parts are planned. */
export interface PlanPartsOptions {
  /**
   * `none` leaves out the verifiers of pattern and formed part, for sizes known to be sound: parts that run into
   * themselves are then not refused. `all` by default.
   */
  readonly verify?: 'all' | 'none';
  /**
   * Ends the work with the reason it was aborted for. Asked before each piece of it: a part's tree, its two views, its
   * verifying, each part tried for a size that would work, each joint, and the marks of its fasteners on each part.
   */
  readonly signal?: StopSignal;
  /** Called when a part is planned, with how many of all are. */
  readonly onProgress?: (done: number, of: number) => void;
}

const MOST_ADVISED = 20; // parts with problems that sizes are searched for: each takes a while

/** Every part of a job built, seen both ways and verified. @throws JobError with every part that cannot exist, and why */
export function* plannedParts(
  { parts: jobParts, units }: Pick<Job, 'parts' | 'units'>,
  { verify = 'all', signal, onProgress }: PlanPartsOptions,
): Pieces<readonly PartPlan[]> {
  const problems: Problem[] = [];
  const parts: PartPlan[] = [];
  let advised = 0;
  for (const [i, part] of jobParts.entries()) {
    try {
      parts.push(yield* partPieces(part, verify));
    } catch (error) {
      if (!(error instanceof JobError)) throw error;
      advised += 1;
      const attempt = (p: JobPart) => {
        signal?.throwIfAborted();
        return planPart(p);
      };
      const refusals =
        advised > MOST_ADVISED ? error.refusals : withAdvice(part, error.refusals, units, attempt);
      problems.push(...refusals.map((r) => placed(worded(r, units), part)));
    }
    onProgress?.(i + 1, jobParts.length);
    yield;
  }
  if (problems.length > 0) throw new JobError(problems);
  return parts;
}

/** One part built, seen both ways and verified. @throws JobError when it cannot exist */
export const planPart = (jobPart: JobPart, verify: 'all' | 'none' = 'all'): PartPlan =>
  atOnce(partPieces(jobPart, verify));

function* partPieces(jobPart: JobPart, verify: 'all' | 'none'): Pieces<PartPlan> {
  const { family, params, asMade, sheet } = jobPart;
  const part = family.part(params, sheet);
  const made = asMade === params ? part : family.part(asMade, sheet);
  const asked = jobPart.sheet.rule.compensates ? part.asked : [];
  yield;
  return yield* finished(jobPart, part, { part: made, formed: form(made) }, (flat, formed) => {
    if (verify === 'none') return [];
    const flaws = verifyFlat(flat);
    // panels that cross themselves have no solids to look at
    return flaws.length > 0 ? flaws : verifyForm(formed, asked);
  });
}

/** A part that is built: seen both ways and held to what `verify` finds. @throws JobError for its flaws */
export function* finished(
  jobPart: JobPart,
  part: Part,
  stands: PartPlan['stands'],
  verify: (flat: FlatPattern, formed: Formed) => readonly Flaw[],
): Pieces<PartPlan> {
  const { sheet, material, cutBy } = jobPart;
  const whole = unfold(part);
  const formed = part === stands.part ? stands.formed : form(part);
  yield;
  const flaws = verify(whole, formed);
  // panels in each other's way are often many for one reason: the first is told
  const many = [CLASH, CROSSES].map((code) => flaws.find((f) => f.code === code));
  const told = flaws.filter((f) => many.includes(f) || (f.code !== CLASH && f.code !== CROSSES));
  if (told.length > 0) throw new JobError(told.map((f) => flawProblem(f, jobPart.params)));
  const flat = cutBy?.by === 'table' ? soundlyCutBack(whole, cutBy.leastEdge) : whole;
  const mass = (flat.area * sheet.thickness * material.density) / 1e9;
  return { ...jobPart, part, flat, formed, stands, mass };
}

/** A pattern cut back for a table, where it is sound then: what was formed of it is verified before and holds more metal. */
function soundlyCutBack(whole: FlatPattern, leastEdge: number): FlatPattern {
  const cut = cutBack(whole, leastEdge);
  return cut === whole || verifyCut(cut).length > 0 ? whole : cut;
}

const CLASH = 'form-clash';
const CROSSES = 'flat-crosses';

/** Panels in each other's way, a pattern that meets itself and sizes cut away at the corners are the sizes' doing; any other flaw is ours. */
function flawProblem({ code, message, size }: Flaw, params: unknown): Refusal {
  if (size !== undefined) {
    const path = wayOf(size);
    return { code, path: typeof valueAt(params, path) === 'number' ? path : [], message, fix: '' };
  }
  if (code === CLASH || code === CROSSES) return { code, path: [], message, fix: '' };
  const fix = 'This is a fault of the program, not of the job: please report it with the job file';
  return { code, path: [], message, fix };
}

/** Problems of a bend rule belong where the rule was given, all others to the part. */
function placed(problem: Problem, part: JobPart): Problem {
  const [first, ...rest] = problem.path;
  const path = first === 'bending' ? [...part.bendingPath, ...rest] : [...part.path, ...problem.path];
  return { ...problem, path, part: part.name };
}
