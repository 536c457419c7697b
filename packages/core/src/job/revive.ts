import type { JobHardware } from '../assembly/bought.js';
import type { JointSpec } from '../assembly/types.js';
import { suggestion } from '../errors/nearest.js';
import { fail } from '../errors/problem.js';
import type { AnyFamily } from '../families/family.js';
import { FAMILIES } from '../families/index.js';
import { withMethods } from '../units/with-methods.js';
import type { Job, JobPart } from './job.js';
import { type OwnTables, type Tables, tablesWith } from './tables.js';

/** Code of one's own that a job leans on: its families, and the tables it was read with. */
export interface OwnCode extends OwnTables {
  readonly families?: readonly AnyFamily[];
}

/** A job's code, the built-in one and one's own. */
export interface Code extends Tables {
  readonly families: readonly AnyFamily[];
}

/** All code there is. @throws RangeError for a name that is there twice */
export function codeWith({ families = [], ...own }: OwnCode): Code {
  const names = FAMILIES.map((f) => f.name as string);
  return { ...tablesWith(own), families: [...FAMILIES, ...families.filter((f) => !names.includes(f.name))] };
}

/** True for what still has its methods: data that crossed to another thread has left them there. */
const lives = (value: object, method: string): boolean => method in value;

/** A job that crossed to another thread as data, with the code of its families, rules and fasteners again; any other as it is. */
export function reviveJob(job: Job, own: OwnCode = {}): Job {
  const joined = [...job.joints, ...(job.hardware?.rows ?? [])];
  const whole = job.hardware === null || lives(job.hardware.tools, 'fit');
  if (whole && job.parts.every(isAlive) && joined.every((j) => j.by === null || lives(j.by.kind, 'needs')))
    return job;
  const code = codeWith(own);
  const parts = job.parts.map((p) => revivedPart(p, code));
  const joints = job.joints.map((j) => revivedJoint(j, code));
  const hardware = job.hardware === null ? null : revivedHardware(job.hardware, code);
  return { ...job, parts, joints, hardware, drawn: job.drawn === null ? null : reviveJob(job.drawn, own) };
}

/** Bought parts with their code, where it is there: a plan that is made does without. */
const revivedHardware = ({ rows, tools }: JobHardware, code: Code): JobHardware => ({
  rows: rows.map((r) => revivedJoint(r, code)),
  tools: code.hardware ?? tools,
});

const isAlive = ({ family, sheet }: JobPart) => lives(family, 'part') && lives(sheet.rule, 'terms');

/** The same for a part of built-in families and rules. @throws JobError `code-missing` for any other */
export const revivePart = <P extends JobPart>(part: P): P =>
  isAlive(part) ? part : revivedPart(part, codeWith({}));

/** The part with its code. @throws JobError `code-missing` for a family or a rule that is not there */
export function revivedPart<P extends JobPart>(part: P, code: Code): P {
  if (isAlive(part)) return part;
  const { material, path } = part;
  const family = found('family', part.family.name, code.families, path);
  const { made, ...said } = part.sheet.rule;
  const { kind, constants, strips } = made ?? { kind: said.name, constants: {}, strips: [] };
  const {
    terms,
    forms,
    doubt = () => null,
  } = found('bend rule', kind, code.rules, path).make(constants, material, strips);
  const rule = withMethods(part.sheet.rule, { terms, doubt, ...(forms && { forms }) });
  return { ...part, family, sheet: { ...part.sheet, rule } };
}

/** The same for a joint. @throws JobError `code-missing` for a fastener that is not there */
export function revivedJoint<J extends Pick<JointSpec, 'by' | 'path'>>(joint: J, code: Code): J {
  if (joint.by === null || lives(joint.by.kind, 'needs')) return joint;
  const kind = found('fastener', joint.by.kind.name, code.fasteners, joint.path);
  return { ...joint, by: { ...joint.by, kind } };
}

function found<T extends { readonly name: string }>(
  what: string,
  name: string,
  all: readonly T[],
  path: JobPart['path'],
): T {
  const names = all.map((one) => one.name);
  return (
    all.find((one) => one.name === name) ??
    fail(
      'code-missing',
      path,
      `${what} "${name}" came as data, without its code`,
      suggestion(name, names) || 'Pass it to revivePlan',
    )
  );
}
