import type { PartPlan } from '@tinwright/core';
import type { Shop } from '../../machines/shop.js';
import type { PartToBend } from '../search/problem.js';
import type { BendProblem, FoundPlan } from '../search/states.js';
import { bendStep } from './bend-step.js';
import type { Sequence } from './plan.js';

/** A planned part as the planner of bends wants it. */
export function partToBend({ name, part, quantity, material, mass, flat }: PartPlan): PartToBend {
  return { name, part, quantity, material, mass, blank: flat.blank.max };
}

/** A plan that was found, as a shop makes it: optimal where the bound says that none takes less, or none that keeps tools on as long as they serve. */
export function plannedSequence(
  problem: BendProblem,
  plan: PartPlan,
  shop: Shop,
  {
    moves,
    bound,
    cost,
    expanded,
    toolsKept,
  }: FoundPlan & { readonly moves: NonNullable<FoundPlan['moves']> },
): Sequence {
  const gap = cost === 0 ? 0 : Math.max(0, (cost - bound) / cost);
  const status = gap < 1e-9 ? 'optimal' : 'feasible';
  return {
    part: plan.name,
    shop: shop.name,
    status,
    proved: status === 'optimal',
    toolsKept,
    steps: moves.map((m, i) => bendStep(problem, m, plan, shop, moves[i - 1]?.position ?? null)),
    seconds: cost,
    bound,
    gap,
    reasons: [],
    mends: [],
    expanded,
  };
}
