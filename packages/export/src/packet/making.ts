import type { Finding, JobPlan, PartPlan } from '@tinwright/core';
import {
  DEFAULT_SHOP,
  jobOperations,
  type Operations,
  planShop,
  type Sequence,
  type Shop,
} from '@tinwright/shop';

/** What is known of how the job is made in a shop. */
export interface Making {
  readonly shop: Shop;
  /** True where no shop was given. */
  readonly assumed: boolean;
  readonly sequences: ReadonlyMap<string, Sequence>;
  readonly operations: Operations;
  readonly findings: readonly Finding[];
}

const MOST_STEPS = 60; // that the planner of bends takes; a hem is two

/** How a job is made in a shop: bend orders, operations, what to know. A shop is assumed where none is given. */
export function makingOf(plan: JobPlan, given: Shop | null): Making {
  const shop = given ?? DEFAULT_SHOP;
  const parts = plan.parts.filter(plannable);
  const { sequences: found, findings } = planShop({ ...plan, parts }, shop);
  const sequences = new Map<string, Sequence>(found.map((s) => [s.part, s]));
  return { shop, assumed: given === null, sequences, operations: jobOperations(plan, sequences), findings };
}

function plannable({ flat }: PartPlan): boolean {
  const steps = flat.bends.reduce((sum, b) => sum + (b.hem === null || b.hem === 'wired' ? 1 : 2), 0);
  return steps <= MOST_STEPS;
}
