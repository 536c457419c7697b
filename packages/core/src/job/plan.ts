import { valueAt } from '../advice/values.js';
import { type Assembly, assemble, marksOf, withMarks, withParts } from '../assembly/assemble.js';
import type { Fastener } from '../assembly/fastener.js';
import type { AssemblyPart } from '../assembly/types.js';
import type { Check } from '../checks/check.js';
import { findingsOf } from '../checks/index.js';
import { type Finding, sortFindings } from '../errors/finding.js';
import { fail, JobError, type Problem, type Refusal, worded } from '../errors/problem.js';
import { cutBack } from '../fold/cut-back.js';
import type { FlatPattern } from '../fold/flat.js';
import { form } from '../fold/form.js';
import type { Formed } from '../fold/formed.js';
import { wayOf } from '../fold/names.js';
import type { Part } from '../fold/part.js';
import { unfold } from '../fold/unfold.js';
import { type Flaw, verifyCut, verifyFlat } from '../fold/verify-flat.js';
import { verifyForm } from '../fold/verify-form.js';
import type { Unit } from '../units/length.js';
import { atOnce, inTurns, type Pieces, type StopSignal } from '../units/pieces.js';
import { withAdvice } from './advice.js';
import { withPlaces } from './clash-changes.js';
import { measuredFindings } from './measured-findings.js';
import type { Job, JobPart } from './read.js';
import { reviveJob } from './revive.js';

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

/** A job with everything computed and verified. */
export interface JobPlan {
  readonly job: Job;
  readonly parts: readonly PartPlan[];
  /** The object put together; null without joints. */
  readonly assembly: Assembly | null;
  readonly findings: readonly Finding[];
}

/** How a job is planned. */
export interface PlanJobOptions {
  /** Fasteners as they were when parts that are made were cut; those of the job as drawn by default. */
  readonly cut?: readonly Fastener[];
  /**
   * `none` leaves out the verifiers of pattern and formed part, for sizes known to be sound: parts that run into
   * themselves are then not refused. `all` by default.
   */
  readonly verify?: 'all' | 'none';
  /** Checks of one's own, after the built-in ones. */
  readonly checks?: readonly Check[];
  /**
   * Ends the work with the reason it was aborted for. Asked before each piece of it: a part's tree, its two views, its
   * verifying, each part tried for a size that would work, each joint, and the marks of its fasteners on each part.
   */
  readonly signal?: StopSignal;
  /** Called when a part is planned, with how many of all are. */
  readonly onProgress?: (done: number, of: number) => void;
}

/**
 * Build, unfold, form and verify every part of a job, put them together by its joints, and mark every fastener on
 * the parts it goes through.
 * @throws JobError with every part that cannot exist, and why; what `signal` was aborted for
 */
export function planJob(job: Job, options: PlanJobOptions = {}): JobPlan {
  return atOnce(planPieces(job, options), options.signal);
}

/**
 * The same, with room for other work between its pieces: timers run, a page stays alive, and a signal can be aborted.
 * @throws as `planJob` does
 */
export function planJobAsync(job: Job, options: PlanJobOptions = {}): Promise<JobPlan> {
  return inTurns(planPieces(job, options), EVERY, options.signal);
}

const EVERY = 3; // pieces between two pauses: about a part

function* planPieces(given: Job, options: PlanJobOptions): Pieces<JobPlan> {
  const job = reviveJob(given);
  if (job.hardware !== null && !('fit' in job.hardware.tools))
    fail('code-missing', ['hardware'], 'bought parts came as data, without their code', 'Read the job again');
  const { cut = drawnFasteners(job), checks = [] } = options;
  const parts = yield* planAll(job, options);
  const alone = job.joints.length === 0 && job.hardware === null;
  const found: Assembly | null = alone
    ? null
    : yield* saidIn(job.units, assemble(parts.map(standing), job, cut));
  const assembly = found && {
    ...found,
    findings: withPlaces(found.findings, parts.map(standing), job),
  };
  const marked: PartPlan[] = [];
  for (const p of parts)
    marked.push(assembly === null ? p : yield* withFasteners(p, assembly, options.verify));
  const findings = [
    ...marked.flatMap((p) => findingsOf(p, checks)),
    ...(assembly?.findings ?? []),
    ...marked.flatMap(measuredFindings),
  ];
  const order = parts.map((p) => p.name);
  const complete = assembly === null ? null : withParts(assembly, marked.map(standing));
  return { job, parts: marked, assembly: complete, findings: sortFindings(findings, order) };
}

/** The work, what it refuses said in the unit of the job. */
function* saidIn<T>(unit: Unit, work: Pieces<T>): Pieces<T> {
  try {
    return yield* work;
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    throw new JobError(error.refusals.map((r) => worded(r, unit)));
  }
}

/** Fasteners of the job as it was before anything was measured. */
function drawnFasteners({ drawn, joints }: Job): readonly Fastener[] {
  return drawn === null || joints.length === 0 ? [] : (planJob(drawn).assembly?.fasteners ?? []);
}

const MOST_ADVISED = 20; // parts with problems that sizes are searched for: each takes a while

function* planAll(
  { parts: jobParts, units }: Job,
  { verify = 'all', signal, onProgress }: PlanJobOptions,
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

const standing = ({ name, quantity, material, made, stands }: PartPlan): AssemblyPart => ({
  name,
  quantity,
  material,
  made,
  ...stands,
});

/** The part with its fasteners marked, on the pattern and on the formed part. */
function* withFasteners(
  plan: PartPlan,
  { fasteners }: Assembly,
  verify: PlanJobOptions['verify'],
): Pieces<PartPlan> {
  const marks = marksOf(plan, fasteners);
  if (marks.length === 0) return plan;
  const part = withMarks(plan.part, marks);
  const stood = plan.stands.part === plan.part ? part : withMarks(plan.stands.part, marks);
  // no panel moves for a mark: only the pattern, with its new holes, has to be looked at again
  const look = verify === 'none' ? () => [] : verifyFlat;
  return yield* finished(plan, part, { part: stood, formed: form(stood) }, look);
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

function* finished(
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
