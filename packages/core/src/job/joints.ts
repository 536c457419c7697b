import * as z from 'zod/mini';
import type { JointSpec } from '../assembly/types.js';
import type { Path, Problem } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import type { AnyFastenerKind, FastenerAsk } from '../joining/fastener.js';
import { FASTENER_KINDS } from '../joining/kinds.js';
import { type Gives, type ParamKit, strictGroup } from '../schema/kit.js';
import { nameSchema } from './name.js';
import { splitName } from './sizes.js';

const LEAST_PITCH = 1; // mm; no fastener is as small, and nearer ones are thousands; common practice, no source

/** Clearance a joint asks for when it says nothing, mm. Common practice, no source. */
const USUAL_CLEARANCE = 0.2;

/** A joint as read from a job file, lengths in mm. */
export interface JointData {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly by: JointSpec['by'];
  readonly shift: { readonly across: number; readonly up: number };
  readonly clearance: number;
  readonly at: number | readonly number[] | null;
  readonly every: number | null;
  readonly count: number | null;
  readonly edge: string | null;
}

const MOST_FASTENERS = 500;
const MOST_PLACES = 200;

/** An end: `part.site`. */
export const endSchema: Gives<string> = z.string().check(
  z.refine((text) => splitName(text) !== null, {
    error: (issue) => `${quoted(String(issue.input))} given; write part.site, such as body.west or end-1.rim`,
  }),
);

/**
 * Schema of how something is fastened by one of these kinds: a word, which takes every default of its kind, or a kind
 * with its values. Gives null for `none`.
 */
export function bySchema(kit: ParamKit, fasteners: readonly AnyFastenerKind[]): Gives<JointSpec['by']> {
  const kinds = fasteners.map((kind) => ({ kind, schema: askSchema(kit, kind) }));
  const words = [...fasteners.map((k) => k.name), 'none'];
  const word = z.pipe(
    z.enum(words),
    z.transform((name): JointSpec['by'] => {
      const said = kinds.find(({ kind }) => kind.name === name);
      return said === undefined ? null : { kind: said.kind, ask: said.schema.parse({}) };
    }),
  );
  const one = z.pipe(
    strictGroup(Object.fromEntries(kinds.map(({ kind, schema }) => [kind.name, z.optional(schema)]))),
    z.transform((given: Readonly<Record<string, FastenerAsk | undefined>>, context) => {
      const said = fasteners.flatMap((kind) => {
        const ask = given[kind.name];
        return ask === undefined ? [] : [{ kind, ask }];
      });
      if (said.length === 1) return said[0] as NonNullable<JointSpec['by']>;
      context.issues.push({
        code: 'custom',
        input: given,
        message: `${said.length} ways of fastening given, one allowed`,
      });
      return z.NEVER;
    }),
  );
  return kit.either(word, one as Gives<JointSpec['by']>, `one of ${words.join(', ')}`);
}

/** Schema of one joint, fastened by one of these kinds. */
export function jointSchema(
  kit: ParamKit,
  fasteners: readonly AnyFastenerKind[] = FASTENER_KINDS,
): Gives<unknown> {
  const offset = kit.or(z.pipe(z.union([z.number(), z.string()]), signedLength(kit)) as Gives<number>, 0);
  return strictGroup({
    name: nameSchema,
    from: endSchema,
    to: endSchema,
    by: bySchema(kit, fasteners),
    shift: kit.or(strictGroup({ across: offset, up: offset }) as unknown as Gives<JointData['shift']>, {
      across: 0,
      up: 0,
    }),
    clearance: kit.instead(kit.size({ min: 0, max: 20 }), `${USUAL_CLEARANCE} mm`),
    at: kit.maybe(
      kit.either(
        kit.size({ min: 0 }),
        kit.list(kit.size({ min: 0 }), 1, MOST_PLACES),
        'a length or a list of them',
      ),
    ),
    every: kit.maybe(kit.size()),
    count: kit.maybe(kit.count(1, MOST_PLACES)),
    edge: kit.maybe(kit.text()),
  });
}

/** A length that may be negative: a sign before what any length is written as. */
function signedLength(kit: ParamKit): z.ZodMiniType<number, number | string> {
  const length = kit.size();
  return z.transform((value: number | string, context) => {
    const negative = typeof value === 'number' ? value < 0 : value.trim().startsWith('-');
    const plain = typeof value === 'number' ? Math.abs(value) : value.trim().replace(/^-/, '');
    const read = plain === 0 ? { success: true as const, data: 0 } : length.safeParse(plain);
    if (read.success) return negative ? -read.data : read.data;
    context.issues.push({
      code: 'custom',
      input: value,
      message: `${quoted(String(value))} is not a length`,
    });
    return z.NEVER;
  }) as unknown as z.ZodMiniType<number, number | string>;
}

function askSchema(kit: ParamKit, kind: AnyFastenerKind): Gives<FastenerAsk> {
  return strictGroup({
    count: kit.maybe(kit.count(1, MOST_FASTENERS)),
    pitch: kit.maybe(kit.size({ min: LEAST_PITCH, max: 2000 })),
    ...kind.options(kit),
  }) as unknown as Gives<FastenerAsk>;
}

/** Joints of a job as they were read, their ends told apart. */
export function jointsOf(list: readonly JointData[]): readonly JointSpec[] {
  return list.map(
    (j, i): JointSpec => ({
      name: j.name,
      from: endOf(j.from),
      to: endOf(j.to),
      by: j.by,
      shift: j.shift,
      clearance: j.clearance,
      places: placesOf(j),
      path: ['joints', i],
    }),
  );
}

/** An end as it was read. */
export function endOf(text: string): JointSpec['from'] {
  const [piece, site] = splitName(text) ?? ['', ''];
  return { piece, site };
}

/** Places along a site; none where the joint says nothing of them. */
function placesOf({ at, every, count, edge }: JointData): JointSpec['places'] {
  if (at === null && every === null && count === null && edge === null) return null;
  return { at: typeof at === 'number' ? [at] : at, every, count, edge };
}

/** Joints that have the same name. */
export function jointTwins(list: unknown): readonly Problem[] {
  if (!Array.isArray(list)) return [];
  const names = [...list].map((j: { name?: unknown } | null | undefined) => j?.name);
  const first = new Map(names.map((name, i) => [name, i] as const).toReversed());
  return names.flatMap((name, i) => {
    const before = first.get(name);
    if (typeof name !== 'string' || before === undefined || before === i) return [];
    const path: Path = ['joints', i, 'name'];
    return [
      {
        code: 'name-twice',
        path,
        message: `the name ${quoted(name)} is taken by joint ${before + 1}`,
        fix: 'Give every joint a name of its own',
      },
    ];
  });
}
