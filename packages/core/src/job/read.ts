import type { StripBend } from '../bending/strip-bend.js';
import { JobError, type Path, type Problem, within, worded } from '../errors/problem.js';
import type { AnyFamily } from '../families/family.js';
import type { Material } from '../stock/materials.js';
import type { Unit } from '../units/length.js';
import { cutByOf, type UsualCut } from './cut-by.js';
import { explained } from './explained.js';
import type { Job, JobPart } from './job.js';
import { jobPart } from './job-part.js';
import { jointsOf, jointTwins } from './joints.js';
import { asMade as asMadeParams, type MeasuredSize, measuredByPart, unreadSize } from './measured.js';
import { isName } from './name.js';
import { parsed } from './parsed.js';
import type { PartData } from './part-schema.js';
import { partTwins } from './part-twins.js';
import { jobRack } from './rack.js';
import { type JobData, type JobSchemas, MOST_PARTS } from './schema.js';
import { followedParts, followedSizes, type KnownSize, resolved, sizesOf } from './sizes.js';
import type { Tables } from './tables.js';

/** What a job is read with beside its families. */
export interface JobContext {
  /** Parts that are made already, by name: they stay as they are whatever the job now says of them. */
  readonly made?: ReadonlyMap<string, JobPart>;
  /** Rows of the shop that `rule: test-strip` looks in. */
  readonly strips?: readonly StripBend[];
  /** Materials of the workshop's own, which jobs may name too. */
  readonly shopMaterials?: readonly Material[];
  /** How the workshop cuts where a job does not say. */
  readonly usualCut?: UsualCut;
}

/**
 * A job read with these schemas.
 * @throws JobError with every problem found, in the order of the job
 */
export function read(data: unknown, given: ReadWith): Job {
  const problems: Problem[] = [];
  const { kit, envelope } = given.schemas;
  const head = parsed(envelope, data, [], problems) as JobData | null;
  const list = (data as { parts?: unknown } | null)?.parts;
  const parts = readParts(
    Array.isArray(list) && list.length <= MOST_PARTS ? [...list] : [],
    head,
    given,
    problems,
  );
  problems.push(
    ...unreadSize(data),
    ...partTwins(list),
    ...(given.tables.hardware?.twins(data) ?? []),
    ...jointTwins((data as { joints?: unknown } | null)?.joints),
  );
  const unique = [...new Map(problems.map((p) => [keyOf(p), p])).values()];
  if (unique.length > 0 || head === null) throw new JobError(named(told(unique, list, given.families), list));
  const { name, note, measured, joints } = head;
  const { hardware: tools } = given.tables;
  const drawn =
    Object.keys(measured).length === 0 ? null : read({ ...(data as object), measured: {} }, given);
  const rack = head.stock === undefined ? null : jobRack(head.stock, given.tables);
  return {
    units: kit.unit,
    name,
    note,
    parts,
    joints: jointsOf(joints),
    hardware:
      tools === null || head.hardware.length === 0 ? null : { rows: tools.read(head.hardware), tools },
    rack,
    drawn,
  };
}

/** What a job is read with. */
export interface ReadWith extends Required<Omit<JobContext, 'shopMaterials'>> {
  readonly families: readonly AnyFamily[];
  readonly schemas: JobSchemas;
  readonly tables: Tables;
}

/** Parts in order; each may follow sizes of those before it. */
function readParts(
  list: readonly unknown[],
  head: JobData | null,
  given: ReadWith,
  problems: Problem[],
): readonly JobPart[] {
  const { made, schemas, families, strips, tables } = given;
  const { unit: units } = schemas.kit;
  const cutBy = cutByOf(head?.cutBy, given.usualCut);
  const order = list.map(textName);
  const [measured] =
    head === null ? [] : attempt(problems, () => measuredByPart(head.measured, order.filter(Boolean)));
  const known = new Map<string, readonly KnownSize[]>();
  const follows = new Map(list.map((raw, i) => [order[i] as string, followedParts(raw)]));
  return list.flatMap((raw, i): readonly JobPart[] => {
    const path: Path = ['parts', i];
    const name = order[i] as string;
    const keep = (part: JobPart) => {
      const read = withMeasured(part, measured?.get(name) ?? [], units);
      const sizes = within(path, () => sizesOf(read.family, read.asMade, read.sheet));
      known.set(name, sizes);
      return read;
    };
    const stays = made.get(name);
    if (stays !== undefined) return attempt(problems, () => keep({ ...stays, made: true }));
    const [plain] = attempt(problems, () =>
      resolved(raw ?? null, path, name, { known, order, follows, units }),
    );
    if (plain === undefined) return [];
    const schema = schemas.part((plain as { family?: unknown } | null)?.family);
    const part = parsed(schema, plain, path, problems) as PartData | null;
    if (part === null || head === null) return [];
    return attempt(problems, () => {
      const read = jobPart(
        part,
        families.find((f) => f.name === part.family) as AnyFamily,
        { ...head, cutBy, strips, tables },
        path,
      );
      return keep({ ...read, follows: followedSizes(raw, read.params, known) });
    });
  });
}

/** Problems with parameters told with what those are. */
const told = (problems: readonly Problem[], parts: unknown, families: readonly AnyFamily[]) =>
  problems.map((problem) => {
    const [first, index, ...path] = problem.path;
    const part = first === 'parts' && Array.isArray(parts) ? (parts[index as number] as unknown) : null;
    const name = (part as { family?: unknown } | null)?.family;
    return explained(
      problem,
      families.find((f) => f.name === name),
      path,
    );
  });

/** What a part is called; '' where that is no text. */
function textName(part: unknown): string {
  const name = (part as { name?: unknown } | null)?.name;
  return typeof name === 'string' ? name : '';
}

/** Problems of a part told whose they are, where the part has a name that can be printed. */
export function named<P extends Pick<Problem, 'path'>>(problems: readonly P[], parts: unknown): readonly P[] {
  return problems.map((p) => {
    const [first, index] = p.path;
    const name = first === 'parts' && Array.isArray(parts) ? textName(parts[index as number]) : '';
    return isName(name) ? { ...p, part: name } : p;
  });
}

const keyOf = ({ code, message, path }: Problem) => [code, message, ...path].join('\n');

/** The result in a list, or an empty list and the problems kept. */
function attempt<T>(problems: Problem[], work: () => T): readonly T[] {
  try {
    return [work()];
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    problems.push(...error.problems);
    return [];
  }
}

/** The part with what was measured on it. @throws JobError for sizes it does not have or cannot have */
function withMeasured(part: JobPart, measured: readonly MeasuredSize[], units: Unit): JobPart {
  if (measured.length === 0) return part;
  const { family, params, sheet } = part;
  const asMade = asMadeParams(params, sizesOf(family, params, sheet), measured);
  try {
    family.part(asMade, sheet);
  } catch (error) {
    const [refusal] = error instanceof JobError ? error.refusals : [];
    if (refusal === undefined) throw error;
    throw new JobError([
      {
        code: 'measured-impossible',
        path: (measured[0] as MeasuredSize).path,
        message: `no ${family.name} can measure so: ${worded(refusal, units).message}`,
        fix: 'Measure again, or check the size it is written for',
      },
    ]);
  }
  return { ...part, asMade, measured, made: true };
}
