import { sizesIn } from '../advice/values.js';
import { suggestion } from '../errors/nearest.js';
import { JobError } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import type { AnyFamily } from '../families/family.js';
import { FAMILIES } from '../families/index.js';
import type { FlatMark } from '../fold/flat/flat.js';
import type { JobPart } from './job.js';
import { jobReader } from './job-reader.js';
import { type JobPlan, planJob } from './plan.js';
import type { PartPlan } from './plan-parts.js';
import type { JobContext } from './read.js';
import { sizesOf } from './sizes.js';
import type { OwnTables } from './tables.js';

/** What was found on the bench. */
export interface RefitAsk extends Pick<JobContext, 'strips' | 'usualCut' | 'shopMaterials'> {
  /** Sizes measured on finished parts, by `part.size`: a length in the job's unit or with its own. */
  readonly measured: Readonly<Record<string, unknown>>;
  /** Parts that are made already and stay as they are, beside those that were measured. */
  readonly made: readonly string[];
}

/** A size of a part that is another now. mm */
export interface RefitChange {
  readonly part: string;
  /** A parameter, a derived size, `blank x` or `blank y`. */
  readonly dimension: string;
  readonly before: number;
  readonly after: number;
  /** True for a size that was measured, not computed. */
  readonly measured: boolean;
}

/** A job fitted to what was measured. */
export interface Refit {
  readonly before: JobPlan;
  readonly after: JobPlan;
  readonly changes: readonly RefitChange[];
  /** Parts to be cut that have another pattern now, sizes or fastening places. */
  readonly changed: readonly PartPlan[];
}

const SAME = 1e-6; // mm

/**
 * Fit a job to what was measured on parts that are made: everything still to be cut follows, what is made stays.
 * @throws JobError when the job cannot be read, or what was measured cannot be
 */
export function refit(
  data: unknown,
  ask: RefitAsk,
  families: readonly AnyFamily[] = FAMILIES,
  own: OwnTables = {},
): Refit {
  const { measured, made: named, ...context } = ask;
  const read = jobReader(families, own);
  const job = read(data, context);
  const before = planJob(job);
  const made = new Map(madeParts(job.parts, named).map((p) => [p.name, p]));
  const was = (data as { measured?: object }).measured ?? {};
  const fresh = { ...(data as object), measured: { ...was, ...measured } };
  const after = planJob({ ...read(fresh, { ...context, made }), drawn: null }, { cut: before });
  const pairs = after.parts.map((a, i) => [before.parts[i] as PartPlan, a] as const);
  const closed = after.assembly?.seated.map((s) => s.joint.name) ?? [];
  return {
    before,
    after,
    changes: pairs.flatMap(([b, a]) => changesOf(b, a)),
    changed: pairs.filter(([b, a]) => !a.made && !samePattern(b, a, closed)).map(([, a]) => a),
  };
}

function madeParts(parts: readonly JobPart[], names: readonly string[]): readonly JobPart[] {
  const known = parts.map((p) => p.name);
  const problems = names
    .filter((n) => !known.includes(n))
    .map((name) => ({
      code: 'part-unknown',
      path: [],
      message: `there is no part ${quoted(name)} that could be made`,
      fix: suggestion(name, known),
    }));
  if (problems.length > 0) throw new JobError(problems);
  return parts.filter((p) => names.includes(p.name));
}

function changesOf(before: PartPlan, after: PartPlan): readonly RefitChange[] {
  const [was, is] = [dimensionsOf(before), dimensionsOf(after)];
  const names = [...new Set([...was.keys(), ...is.keys()])];
  return names.flatMap((dimension): readonly RefitChange[] => {
    const [b, a] = [was.get(dimension) ?? 0, is.get(dimension) ?? 0];
    if (Math.abs(a - b) <= SAME) return [];
    const measured = after.measured.some((m) => m.size === dimension);
    return [{ part: after.name, dimension, before: b, after: a, measured }];
  });
}

/** Every size of a part as it stands, and of its blank unless that is cut already. */
function dimensionsOf({ family, asMade, sheet, flat }: PartPlan): ReadonlyMap<string, number> {
  const [x, y] = flat.blank.max;
  return new Map<string, number>([
    ...sizesIn(asMade).map(({ path, given }): [string, number] => [path.join('.'), given]),
    ...sizesOf(family, asMade, sheet).map((s): [string, number] => [s.name, s.value]),
    ['blank x', x],
    ['blank y', y],
  ]);
}

/** True when two patterns are cut, bent and marked alike; marks of a joint that no longer closes do no harm. */
function samePattern(before: PartPlan, after: PartPlan, closed: readonly string[]): boolean {
  const cut = ({ flat, part }: PartPlan) => [
    flat.outline,
    flat.bends.map((l) => l.line),
    part.panels.map((p) => [p.holes, p.cutouts]),
  ];
  const [was, is] = [before.flat.marks, after.flat.marks];
  const wanted = was.filter((m) => closed.includes(m.joint));
  return alike(cut(before), cut(after)) && among(was, is) && among(is, wanted);
}

/** True when each of the marks is one of them all. */
const among = (all: readonly FlatMark[], some: readonly FlatMark[]) =>
  some.every((m) => all.some((n) => alike([m.kind, m.hole, m.at], [n.kind, n.hole, n.at])));

function alike(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= SAME;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const [p, q] = [Object.entries(a), Object.entries(b)];
  return p.length === q.length && p.every(([k, v], i) => k === q[i]?.[0] && alike(v, q[i]?.[1]));
}
