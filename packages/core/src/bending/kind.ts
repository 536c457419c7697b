import type * as z from 'zod/mini';
import type { BendRule } from './rule.js';
import type { StripBend } from './strip-bend.js';

/** What a rule may take from the stock, and from the strips of it that were bent. */
export interface RuleStock {
  /** The material's name. */
  readonly name: string;
  readonly k: number;
  readonly kSource: string;
}

/** A rule as a job file names it: its constants and how to make it. One per file, listed in `kinds.ts`. */
export interface RuleKind<
  Shape extends z.core.$ZodLooseShape = z.core.$ZodLooseShape,
  N extends string = string,
> {
  readonly name: N;
  /** One line for help texts. */
  readonly summary: string;
  /** Constants the job gives beside `rule:`. */
  readonly constants: Shape;
  /** The rule itself, from its constants, the metal and the strips that were bent of it. */
  readonly make: (
    constants: z.output<z.ZodMiniObject<Shape>>,
    stock: RuleStock,
    strips: readonly StripBend[],
  ) => BendRule;
}

/** A kind of rule that still knows its name and its constants, so that jobs are checked as they are typed. */
export interface NamedRuleKind<N extends string, Shape extends z.core.$ZodLooseShape> extends RuleKind {
  readonly name: N;
  readonly constants: Shape;
}

/** Keep the constants' types together with the maker that uses them. */
export function ruleKind<const N extends string, Shape extends z.core.$ZodLooseShape>(
  kind: RuleKind<Shape, N>,
): NamedRuleKind<N, Shape> {
  return kind as unknown as NamedRuleKind<N, Shape>;
}
