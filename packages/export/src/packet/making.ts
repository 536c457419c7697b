import type { Finding, JobPlan, PartPlan } from '@tinwright/core';
import {
  DEFAULT_SHOP,
  jobFindings,
  jobOperations,
  type Operations,
  planSequence,
  type Sequence,
  type Shop,
} from '@tinwright/shop';
import type { Drawing } from '../drawing.js';

/** What is known of how the job is made in a shop. */
export interface Making {
  readonly shop: Shop;
  /** True where no shop was given. */
  readonly assumed: boolean;
  readonly sequences: ReadonlyMap<string, Sequence>;
  readonly operations: Operations;
  readonly findings: readonly Finding[];
  /** Pictures of the steps of bending, by the name of the part. */
  readonly pictures?: ReadonlyMap<string, readonly Drawing[]>;
}

const MOST_STEPS = 60; // that the planner of bends takes; a hem is two

/** How a job is made in a shop: bend orders, operations, what to know. A shop is assumed where none is given. */
export function makingOf(plan: JobPlan, given: Shop | null): Making {
  const shop = given ?? DEFAULT_SHOP;
  const sequences = new Map<string, Sequence>(
    plan.parts.filter(plannable).map((p) => [p.name, planSequence(p, shop)]),
  );
  return {
    shop,
    assumed: given === null,
    sequences,
    operations: jobOperations(plan, sequences),
    findings: jobFindings(plan, shop),
  };
}

function plannable({ flat }: PartPlan): boolean {
  const steps = flat.bends.reduce((sum, b) => sum + (b.hem === null || b.hem === 'wired' ? 1 : 2), 0);
  return steps > 0 && steps <= MOST_STEPS;
}
