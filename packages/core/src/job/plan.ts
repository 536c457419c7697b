import { findingsOf } from '../checks/index.js';
import { type Finding, sortFindings } from '../errors/finding.js';
import { JobError, type Problem } from '../errors/problem.js';
import type { FlatPattern } from '../fold/flat.js';
import { form } from '../fold/form.js';
import type { Formed } from '../fold/formed.js';
import type { Part } from '../fold/part.js';
import { unfold } from '../fold/unfold.js';
import { type Flaw, verifyFlat } from '../fold/verify-flat.js';
import { verifyForm } from '../fold/verify-form.js';
import type { Job, JobPart } from './read.js';

/** A part with both of its views. mm, kg */
export interface PartPlan extends JobPart {
  readonly part: Part;
  readonly flat: FlatPattern;
  readonly formed: Formed;
  /** Mass of one piece: net flat area × thickness × density. */
  readonly mass: number;
}

/** A job with everything computed and verified. */
export interface JobPlan {
  readonly job: Job;
  readonly parts: readonly PartPlan[];
  readonly findings: readonly Finding[];
}

/**
 * Build, unfold, form and verify every part of a job.
 * @throws JobError with every part that cannot exist, and why
 */
export function planJob(job: Job): JobPlan {
  const problems: Problem[] = [];
  const parts = job.parts.flatMap((part): readonly PartPlan[] => {
    try {
      return [planPart(part)];
    } catch (error) {
      if (!(error instanceof JobError)) throw error;
      problems.push(...error.problems.map((p) => placed(p, part)));
      return [];
    }
  });
  if (problems.length > 0) throw new JobError(problems);
  const findings = parts.flatMap(findingsOf);
  return {
    job,
    parts,
    findings: sortFindings(
      findings,
      parts.map((p) => p.name),
    ),
  };
}

/** One part built, seen both ways and verified. @throws JobError when it cannot exist */
export function planPart(jobPart: JobPart): PartPlan {
  const { family, params, sheet, material } = jobPart;
  const part = family.part(params, sheet);
  const flat = unfold(part);
  const formed = form(part);
  const asked = sheet.rule.compensates ? part.asked : [];
  const flaws = [...verifyFlat(flat), ...verifyForm(formed, asked)];
  if (flaws.length > 0) throw new JobError(flaws.map(flawProblem));
  const mass = (flat.area * sheet.thickness * material.density) / 1e9;
  return { ...jobPart, part, flat, formed, mass };
}

/** Panels in each other's way are the sizes' doing; any other flaw is ours. */
function flawProblem({ code, message }: Flaw): Problem {
  const fix =
    code === 'form-clash'
      ? 'Change the sizes so that they stay clear of each other'
      : 'This is a fault of the program, not of the job: please report it with the job file';
  return { code, path: [], message, fix };
}

/** Problems of a bend rule belong where the rule was given, all others to the part. */
function placed(problem: Problem, part: JobPart): Problem {
  const [first, ...rest] = problem.path;
  const path = first === 'bending' ? [...part.bendingPath, ...rest] : [...part.path, ...problem.path];
  return { ...problem, path, part: part.name };
}
