import type * as z from 'zod/mini';
import type { Refusal } from '../errors/problem.js';
import { fold } from '../fold/build.js';
import type { Part } from '../fold/part.js';
import type { Sheet, Step } from '../fold/tree.js';
import type { ParamKit, Shape } from '../schema/kit.js';
import { advised } from './advice.js';
import type { DerivedSize } from './derived.js';
import type { Complaint } from './limits.js';

/** Words and an example of a family, for help, starter jobs and pictures. */
export interface Description {
  /** What the part is, a short noun phrase. */
  readonly title: string;
  /** One or two sentences: what it is for, its frame. */
  readonly summary: string;
  /** One line for every parameter by its path, `hem.length`. */
  readonly sizes: Readonly<Record<string, string>>;
  /** Parameters of a sensible example, mm. */
  readonly example: Readonly<Record<string, unknown>>;
}

/** A parametric kind of part; `P` are its parameters as `check` and `build` get them: mm, defaults filled in. */
export interface Family<P = never> {
  /** Name in a job file: lower case, words joined by hyphens. */
  readonly name: string;
  readonly params: (kit: ParamKit) => Shape<P>;
  /**
   * Parameters that cannot be made together, and why; the size that would work is found by trying. Complain of the
   * outer size when nothing fits in it, else of the inner one. Only called with parameters the schemas accept.
   */
  readonly check: (params: P, sheet: Sheet) => readonly Complaint[];
  /** The verbs that build the part; no flat coordinates. Only called when `check` found nothing. */
  readonly build: (params: P, sheet: Sheet) => readonly Step[];
  /** Finished sizes that follow from the parameters, for other parts to follow and for the rule to measure. */
  readonly derived?: (params: P, sheet: Sheet) => readonly DerivedSize[];
  readonly describe: Description;
}

/** A family with its parameters' type put aside, as lists and jobs hold it. */
export interface AnyFamily {
  readonly name: string;
  readonly describe: Description;
  /** A schema for every parameter. */
  readonly params: (kit: ParamKit) => z.core.$ZodLooseShape;
  /** Check parameters that went through the schemas; each refusal names the size that would work. */
  readonly check: (params: unknown, sheet: Sheet) => readonly Refusal[];
  /** Build a part from parameters that `check` let pass. @throws JobError when corners leave nothing of a panel */
  readonly part: (params: unknown, sheet: Sheet) => Part;
  readonly derived: (params: unknown, sheet: Sheet) => readonly DerivedSize[];
}

const NAME = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

/**
 * Define a family. It gets schema, help, errors, verification and the test kit as the built-in ones do.
 * @throws RangeError when the name is not lower-case words joined by hyphens
 */
export function defineFamily<P>(family: Family<P>): AnyFamily {
  const { name, describe } = family;
  if (!NAME.test(name))
    throw new RangeError(`family name "${name}" given, lower-case words joined by hyphens allowed`);
  return {
    name,
    describe,
    params: family.params,
    // what arrives below went through those schemas, which give a P
    check: (params, sheet) => advised(params, (p) => family.check(p as P, sheet)),
    part: (params, sheet) => fold(sheet, ...family.build(params as P, sheet)),
    derived: (params, sheet) => family.derived?.(params as P, sheet) ?? [],
  };
}
