import type * as z from 'zod/mini';
import { JobError, type Path } from '../errors/problem.js';
import { drafted, fold } from '../fold/build.js';
import { type NamesIn, namedIn } from '../fold/draft/names.js';
import { verbs } from '../fold/draft/sound.js';
import type { Sheet, Step } from '../fold/draft/tree.js';
import type { Part } from '../fold/settle/part.js';
import { inRange, PLACE } from '../schema/in-range.js';
import { type ParamKit, paramKit, strictGroup } from '../schema/kit.js';
import { problemsOf } from '../schema/problems.js';
import { type Given, shapeOf, type Values, type Written, wordsOf } from '../schema/value.js';
import { frozen } from '../units/frozen.js';
import { withMethods } from '../units/with-methods.js';
import { COMMON, commonSteps, PART_KEYS } from './common.js';
import type { DerivedSize } from './derived.js';
import type { Complaint } from './limits.js';
import { refused, withGiven } from './refused.js';

/** Words and an example of a family, for help, starter jobs and pictures. */
export interface Description<V extends Values> {
  /** What the part is, a short noun phrase. */
  readonly title: string;
  /** One or two sentences: what it is for, its frame. */
  readonly summary: string;
  /** Parameters of a sensible example, as a job in mm writes them. */
  readonly example: Written<V>;
}

/** A parametric kind of part. */
export interface Family<V extends Values, N extends string = string> {
  /** Name in a job file: lower case, words joined by hyphens. */
  readonly name: N;
  /** Its parameters, each declared once; `check` and `build` get them in mm and degrees, defaults filled in. */
  readonly values: V;
  /**
   * What of its own cannot be made together, and why; the size that would work is found by trying. What no sheet
   * could be folded to (legs shorter than their bends, hems that meet) the verbs refuse by themselves.
   */
  readonly check?: (params: Given<V>, sheet: Sheet) => readonly Complaint[];
  /** The verbs that build the part; no flat coordinates. Only called when `check` found nothing. */
  readonly build: (params: Given<V>, sheet: Sheet) => readonly Step<NamesIn<Given<V>>>[];
  /** Finished sizes that follow from the parameters, for other parts to follow and for the rule to measure. */
  readonly derived?: (params: Given<V>, sheet: Sheet) => readonly DerivedSize[];
  readonly describe: Description<V>;
}

/** A family with its parameters' type put aside, as lists and jobs hold it. */
export interface AnyFamily {
  readonly name: string;
  /** Its parameters, and what every part may say beside them. */
  readonly values: Values;
  readonly describe: {
    readonly title: string;
    readonly summary: string;
    /** One line for every parameter by its path, `hem.length`. */
    readonly sizes: Readonly<Record<string, string>>;
    readonly example: Readonly<Record<string, unknown>>;
  };
  /** A schema for every parameter. */
  readonly params: (kit: ParamKit) => z.core.$ZodLooseShape;
  /**
   * Build a part from parameters in mm and degrees; what is left out is filled in.
   * @throws JobError for parameters that are none, and for a part that cannot be
   */
  readonly part: (params: unknown, sheet: Sheet) => Part;
  /** Ways to the parameters that its verbs name with `by` and `asked`, for parameters in mm and degrees. */
  readonly named: (params: unknown, sheet: Sheet) => readonly Path[];
  /** Finished sizes that follow from parameters that were read, mm. */
  readonly derived: (params: unknown, sheet: Sheet) => readonly DerivedSize[];
}

/** A family that still knows its name and its parameters, so that jobs of it are checked as they are typed. */
export interface NamedFamily<N extends string, V extends Values> extends AnyFamily {
  readonly name: N;
  readonly values: V;
  readonly describe: AnyFamily['describe'] & { readonly example: Written<V> };
}

const NAME = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

/**
 * Define a family. It gets schema, help, errors, verification and the test kit as the built-in ones do.
 * @throws RangeError when the name is not lower-case words joined by hyphens, or a parameter has the name of one that
 *   every part has
 */
export function defineFamily<const N extends string, V extends Values>(
  family: Family<V, N>,
): NamedFamily<N, V> {
  const { name, describe } = family;
  const values: V = { ...family.values, ...COMMON };
  if (!NAME.test(name))
    throw new RangeError(`family name "${name}" given, lower-case words joined by hyphens allowed`);
  const taken = Object.keys(family.values).find((key) => key in COMMON || PART_KEYS.includes(key));
  if (taken !== undefined) throw new RangeError(`parameter "${taken}" given, which every part has already`);
  const fill = filling(values);
  const methods = {
    values,
    params: (kit: ParamKit) => shapeOf(family.values, kit),
    part: (params: unknown, sheet: Sheet) => {
      const filled = fill(params) as Given<V>; // and what every part may say
      const own = family.check?.(filled, sheet) ?? [];
      if (own.length > 0) throw new JobError(own.map((c) => refused(c, filled)));
      try {
        return fold(sheet, ...verbs(family.build(filled, sheet)), ...commonSteps(filled));
      } catch (error) {
        if (!(error instanceof JobError)) throw error;
        throw new JobError(error.refusals.map((r) => withGiven(r, filled)));
      }
    },
    named: (params: unknown, sheet: Sheet) =>
      namedIn(drafted(sheet, family.build(fill(params) as Given<V>, sheet))),
    // what arrives here went through the schemas, which give what the family declares
    derived: (params: unknown, sheet: Sheet) => {
      const sizes = family.derived?.(params as Given<V>, sheet) ?? [];
      for (const { name: size, value } of sizes) inRange(value, PLACE, () => `derived size "${size}"`);
      return sizes;
    },
  } satisfies Partial<AnyFamily>;
  return withMethods({ name, describe: frozen({ ...describe, sizes: wordsOf(family.values) }) }, methods);
}

/** Reads parameters in mm; those that have been read before come out the same. */
function filling(values: Values): (params: unknown) => unknown {
  let schema: z.ZodMiniType | null = null; // built when it is first needed: a job reads with its own
  return (params) => {
    schema ??= strictGroup(shapeOf(values, paramKit('mm')));
    const given = withoutNothing(params);
    const read = schema.safeParse(given);
    if (!read.success) throw new JobError(problemsOf(read.error.issues, given));
    return read.data;
  };
}

/** Without what is null or undefined: left out, in a job. */
function withoutNothing(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutNothing);
  if (typeof value !== 'object' || value === null) return value;
  const there: Record<string, unknown> = {};
  for (const [k, v] of Object.entries(value)) if (v !== null && v !== undefined) there[k] = withoutNothing(v);
  return there;
}
