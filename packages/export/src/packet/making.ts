import type { JobPlan, PartPlan } from '@tinwright/core';
import {
  DEFAULT_SHOP,
  jobFindings,
  jobOperations,
  planSequence,
  type Sequence,
  type Shop,
} from '@tinwright/shop';
import type { Making } from './packet-pages.js';

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
