import type * as z from 'zod/mini';
import type { BendRule } from './rule.js';

/** What a rule may take from the stock when the job leaves a constant out. */
export interface RuleStock {
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
  readonly make: (constants: z.output<z.ZodMiniObject<Shape>>, stock: RuleStock) => BendRule;
}

/** Keep the constants' types together with the maker that uses them. */
export function ruleKind<Shape extends z.core.$ZodLooseShape>(kind: RuleKind<Shape>): RuleKind {
  return kind as unknown as RuleKind;
}
