import type * as z from 'zod/mini';
import type { BendRule } from './rule.js';
import type { StripBend } from './test-strip.js';

/** What a rule may take from the stock, and from the strips of it that were bent. */
export interface RuleStock {
  /** The material's name. */
  readonly name: string;
  readonly k: number;
  readonly kSource: string;
}

/** A rule as a job file names it: its constants and how to make it. One per file, listed in `kinds.ts`. */
export interface RuleKind<Shape extends z.core.$ZodLooseShape = z.core.$ZodLooseShape> {
  readonly name: string;
  /** One line for help texts. */
  readonly summary: string;
  /** Constants the job gives beside `rule:`. */
  readonly constants: Shape;
  readonly make: (
    constants: z.output<z.ZodMiniObject<Shape>>,
    stock: RuleStock,
    strips: readonly StripBend[],
  ) => BendRule;
}

/** Keep the constants' types together with the maker that uses them. */
export function ruleKind<Shape extends z.core.$ZodLooseShape>(kind: RuleKind<Shape>): RuleKind {
  return kind as unknown as RuleKind;
}
