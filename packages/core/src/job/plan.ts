import { cutShift } from '../assembly/as-cut.js';
import { type Assembly, assemble, marksOf, withMarks, withParts } from '../assembly/assemble.js';
import type { Fastener } from '../assembly/fastener.js';
import { type AssemblyPart, pieceNames } from '../assembly/types.js';
import type { Check } from '../checks/check.js';
import { findingsOf } from '../checks/index.js';
import { type Finding, sortFindings } from '../errors/finding.js';
import { fail, JobError, worded } from '../errors/problem.js';
import { unfoldMarks } from '../fold/flat/unfold.js';
import { verifyFlat } from '../fold/flat/verify-flat.js';
import { form } from '../fold/formed/form.js';
import type { Loop } from '../plane/loop.js';
import { add, type Point } from '../plane/point.js';
import { placeLoop } from '../plane/shapes.js';
import type { Unit } from '../units/length.js';
import { atOnce, inTurns, type Pieces } from '../units/pieces.js';
import { withPlaces } from './clash-changes.js';
import type { Job } from './job.js';
import { measuredFindings } from './measured-findings.js';
import { finished, type PartPlan, type PlanPartsOptions, plannedParts } from './plan-parts.js';
import { reviveJob } from './revive.js';

/** A job with everything computed and verified. */
export interface JobPlan {
  readonly job: Job;
  readonly parts: readonly PartPlan[];
  /** The object put together; null without joints. */
  readonly assembly: Assembly | null;
  readonly findings: readonly Finding[];
}

/** How a job is planned. */
export interface PlanJobOptions extends PlanPartsOptions {
  /** The plan that parts that are made were cut by; that of the job as drawn by default. */
  readonly cut?: Pick<JobPlan, 'parts' | 'assembly'> | null;
  /** Checks of one's own, after the built-in ones. */
  readonly checks?: readonly Check[];
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
  const parts = yield* plannedParts(job, options);
  const { cut = drawnPlan(job), checks = [] } = options;
  const alone = job.joints.length === 0 && job.hardware === null;
  const found: Assembly | null = alone
    ? null
    : yield* saidIn(job.units, assemble(parts.map(standing), job, cutFasteners(cut, parts)));
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

/** The job as it was before anything was measured. */
function drawnPlan({ drawn, joints, hardware }: Job): PlanJobOptions['cut'] {
  return drawn === null || (joints.length === 0 && hardware === null) ? null : planJob(drawn);
}

/** Fasteners of a plan on the patterns as they are now: what follows a measured part may have another than it was cut by. */
function cutFasteners(cut: PlanJobOptions['cut'], parts: readonly PartPlan[]): readonly Fastener[] {
  return (cut?.assembly?.fasteners ?? []).map((f) => ({
    ...f,
    on: f.on.map((end) => {
      const [was, is] = [cut?.parts, parts].map((list) =>
        list?.find((p) => pieceNames(p).includes(end.piece)),
      );
      if (was === undefined || is === undefined) return end;
      return shifted(end, cutShift({ drawn: was.part, part: is.part }, end.panel));
    }),
  }));
}

/** A place on a panel, and what is cut there, moved. */
function shifted<T extends { readonly at: Point; readonly opening?: Loop }>(place: T, shift: Point): T {
  const opening = place.opening && placeLoop({ origin: shift, x: [1, 0], y: [0, 1] }, place.opening);
  return { ...place, at: add(place.at, shift), ...(opening && { opening }) };
}

const standing = ({ name, quantity, material, made, part, stands }: PartPlan): AssemblyPart => ({
  name,
  quantity,
  material,
  made,
  drawn: part,
  ...stands,
});

/** Marks where they lie on the part as it was found. */
const marksAsFound = (plan: PartPlan, marks: ReturnType<typeof marksOf>): ReturnType<typeof marksOf> =>
  marks.map((m) => shifted(m, cutShift({ drawn: plan.part, part: plan.stands.part }, m.panel)));

/** The part with its fasteners marked, on the pattern and on the formed part. */
function* withFasteners(
  plan: PartPlan,
  { fasteners }: Assembly,
  verify: PlanJobOptions['verify'],
): Pieces<PartPlan> {
  const marks = marksOf(plan, fasteners);
  if (marks.length === 0) return plan;
  const part = withMarks(plan.part, marks);
  const stood =
    plan.stands.part === plan.part ? part : withMarks(plan.stands.part, marksAsFound(plan, marks));
  // no panel moves for a mark: only a pattern with new holes has to be made and looked at again
  if (marks.every((m) => m.hole === null && m.opening === undefined))
    return {
      ...plan,
      part,
      flat: unfoldMarks(plan.flat, part),
      stands: { part: stood, formed: plan.stands.formed },
    };
  const stands = { part: stood, formed: form(stood) };
  return yield* finished(plan, part, stands, verify === 'none' ? () => [] : verifyFlat);
}
