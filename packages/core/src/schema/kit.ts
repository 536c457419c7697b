import * as z from 'zod/mini';
import type { HemSpec } from '../bending/hem.js';
import { sayIn } from '../errors/problem.js';
import { hasHidden, quoted } from '../errors/quote.js';
import { MATERIAL_NAMES } from '../stock/materials.js';
import { formatApart } from '../units/format.js';
import { MM_PER_INCH, parseLength, type Unit } from '../units/length.js';
import { countBetween, numberBetween } from '../units/range.js';

/** Longest size that is read, mm: ten metres. */
export const LONGEST = 10_000;

/** Least size that is read, mm: a hundredth is what a cut or a measure can tell. */
export const LEAST = 0.01;

/** Range of a size, mm. */
export interface SizeRange {
  /** Least size allowed; without it anything above 0. */
  readonly min?: number;
  /** Default ten metres. */
  readonly max?: number;
}

/** Schema that gives a `T`, whatever it reads. */
export type Gives<T> = z.ZodMiniType<T, unknown>;

/** The building blocks of family parameters, for one unit. */
export interface ParamKit {
  readonly unit: Unit;
  /** Names of the materials there are. */
  readonly materials: readonly string[];
  /** A length: a number in the job's unit, or text with its own. Gives mm. */
  readonly size: (range?: SizeRange) => Gives<number>;
  /** A length that is one of certain sizes; `known` lists them. */
  readonly sizeOf: (is: (mm: number) => boolean, known: () => string) => Gives<number>;
  /** Degrees bent through. */
  readonly angle: (least: number, most: number) => Gives<number>;
  /** A hem: `{type, length, gap?}`; null for `{type: none}`, whatever stands beside it as length and gap. */
  readonly hem: () => Gives<HemSpec | null>;
  /** Closed outlines: lists of corners, each x, y and, for an arc to the next one, its bulge. */
  readonly outlines: () => Gives<readonly (readonly (readonly number[])[])[]>;
  /** A name, on one line. */
  readonly text: () => Gives<string>;
  /** Values under names that nobody knows before. */
  readonly named: <T>(schema: Gives<T>) => Gives<Readonly<Record<string, T>>>;
  /** A schema that is built when it first reads something. */
  readonly later: <T>(schema: () => Gives<T>) => Gives<T>;
  /** One word of a list. */
  readonly oneOf: <T extends string>(words: readonly T[]) => Gives<T>;
  /** A value that may be left out: null then. */
  readonly maybe: <T>(schema: Gives<T>) => Gives<T | null>;
  /** A value that may be left out: `value` then. */
  readonly or: <T>(schema: Gives<T>, value: T) => Gives<T>;
  /** A value that may be left out: this is read in its place then, and shown in the published schema. */
  readonly instead: <T>(schema: Gives<T>, written: unknown) => Gives<T>;
  /** Values of one kind, `least` to `most` of them. */
  readonly list: <T>(schema: Gives<T>, least: number, most: number) => Gives<readonly T[]>;
  /** A whole number. */
  readonly count: (least: number, most: number) => Gives<number>;
  /** Named values; unknown names are refused. */
  readonly group: <P>(shape: SchemaShape<P>) => Gives<P>;
  /** One of several groups, told apart by the literal text under `key`. */
  readonly byName: (key: string, options: readonly Gives<unknown>[]) => Gives<unknown>;
  /** The first schema that accepts the value; `what` says what both take, for an error. */
  readonly either: <A, B>(a: Gives<A>, b: Gives<B>, what: string) => Gives<A | B>;
}

/** A schema for every parameter of `P`. */
export type SchemaShape<P> = { readonly [K in keyof P]-?: Gives<P[K]> };

/** The building blocks for parameters written in `unit`, and for the materials there are: the built-in ones by default. */
export function paramKit(unit: Unit, materials: readonly string[] = MATERIAL_NAMES): ParamKit {
  const size = (range: SizeRange = {}) => sizeSchema(unit, range);
  const fallback = <T>(schema: Gives<T>, value: T): Gives<T> =>
    z.pipe(
      z.optional(schema),
      z.transform((v) => (v === undefined ? value : v)),
    ) as Gives<T>;
  return {
    unit,
    materials,
    size,
    sizeOf: (is, known) => {
      const error = (issue: { input: unknown }) =>
        `${sayIn(unit).size(issue.input as number)} given; there are ${known()}`;
      return z.pipe(size(), z.number().check(z.refine(is, { error }))) as Gives<number>;
    },
    angle: (least, most) => numberBetween(least, most, ' deg'),
    hem: () => hemSchema(size),
    outlines: outlinesSchema,
    text: nameSchema,
    named: <T>(schema: Gives<T>) =>
      z.catchall(z.object({}), schema) as unknown as Gives<Readonly<Record<string, T>>>,
    later: (schema) => z.lazy(schema),
    oneOf: (words) => z.enum(words),
    count: countBetween,
    maybe: <T>(schema: Gives<T>) => fallback<T | null>(schema, null),
    or: fallback,
    instead: (schema, written) => z.prefault(schema, written),
    list: listOf,
    group: <P>(shape: SchemaShape<P>) => strictGroup(shape) as unknown as Gives<P>,
    byName: (key, options) => z.discriminatedUnion(key, options as [Group, ...Group[]]),
    either: (a, b, what) => z.union([a, b], { error: () => what }),
  };
}

function listOf<T>(schema: Gives<T>, least: number, most: number): Gives<readonly T[]> {
  const error = (issue: { input: unknown }) =>
    `${(issue.input as readonly unknown[]).length} in the list, ${least} to ${most} allowed`;
  const list = z
    .array(schema)
    .check(z.refine(({ length }) => length >= least && length <= most, { error }))
    .register(z.globalRegistry, { minItems: least, maxItems: most });
  const { parse } = list._zod;
  // of a list that is too long that alone is told: what stands in it may be more than can be read
  list._zod.parse = (given, context) =>
    Array.isArray(given.value) && given.value.length > most ? given : parse(given, context);
  return list;
}

const MOST_OUTLINES = 2000;
/** Most corners of the outlines of an opening, all together. */
export const MOST_CORNERS = 200_000;

function outlinesSchema(): Gives<readonly (readonly (readonly number[])[])[]> {
  const error = (issue: { input: unknown }) =>
    `${(issue.input as readonly unknown[][]).reduce((n, o) => n + o.length, 0)} corners given, up to ${MOST_CORNERS} allowed`;
  const outline = listOf(listOf(z.number(), 2, 3), 2, MOST_CORNERS);
  return listOf(outline, 1, MOST_OUTLINES).check(
    z.refine((all) => all.reduce((n, o) => n + o.length, 0) <= MOST_CORNERS, { error }),
  );
}

const LONGEST_NAME = 80;

function nameSchema(): Gives<string> {
  const error = (issue: { input: unknown }) =>
    `${quoted(String(issue.input))} given; up to ${LONGEST_NAME} plain letters allowed`;
  return z
    .string()
    .check(z.refine((text) => text !== '' && text.length <= LONGEST_NAME && !hasHidden(text), { error }));
}

type Group = z.ZodMiniObject<z.core.$ZodLooseShape, z.core.$strict>;

/** Named values. An unknown name is refused; the message lists the names there are, for the suggestion. */
export function strictGroup(shape: z.core.$ZodLooseShape): Group {
  const known = Object.keys(shape).join(', ');
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? known : undefined),
  });
}

function sizeSchema(unit: Unit, { min, max = LONGEST }: SizeRange): Gives<number> {
  const say = sayIn(unit);
  const [low, high] = [min === undefined ? null : say.least(min), say.most(max)];
  return z.pipe(
    z
      .union([z.number(), z.string()], { error: () => 'a length such as 12.5 or "15 1/2 in"' })
      .register(z.globalRegistry, publishedRange(min, max)),
    z.transform((value, context) => {
      const refuse = (message: string) => {
        context.issues.push({ code: 'custom', input: value, message });
        return z.NEVER;
      };
      const read = parseLength(value, unit);
      if (!read.ok) return refuse(read.why);
      const short = min === undefined ? read.mm <= 0 : read.mm < min - 1e-9;
      const tiny = read.mm > 0 && read.mm < LEAST - 1e-9;
      if (tiny && !short) {
        const least = say.least(LEAST);
        const given = formatApart(read.mm, [least], unit);
        return refuse(`${given} given, ${min === 0 ? '0, or ' : ''}${least} or more allowed`);
      }
      if (!short && read.mm <= max + 1e-9) return read.mm;
      const given = formatApart(read.mm, low === null ? [high] : [low, high], unit);
      return refuse(`${given} given, ${low ?? 'more than 0'} to ${high} allowed`);
    }),
  );
}

/** The range of a number as it is published: what holds in either unit, so that an editor never errs. */
function publishedRange(min: number | undefined, max: number): Readonly<Record<string, unknown>> {
  const least = min === undefined || min === 0 ? {} : { minimum: Number((min / MM_PER_INCH).toFixed(6)) };
  return { ...(min === undefined ? { exclusiveMinimum: 0 } : { minimum: 0, ...least }), maximum: max };
}

function hemSchema(size: ParamKit['size']): Gives<HemSpec | null> {
  const folded = z.discriminatedUnion('type', [
    strictGroup({ type: z.enum(['closed']), length: size() }),
    strictGroup({ type: z.enum(['open']), length: size(), gap: z.optional(size()) }),
    strictGroup({ type: z.enum(['teardrop']), length: size(), gap: z.optional(size()) }),
    // so that a hem can be taken off and put on again by its type alone
    strictGroup({ type: z.enum(['none']), length: z.optional(z.unknown()), gap: z.optional(z.unknown()) }),
  ]);
  return z.pipe(
    folded,
    z.transform((hem): HemSpec | null => (hem.type === 'none' ? null : (hem as unknown as HemSpec))),
  );
}
