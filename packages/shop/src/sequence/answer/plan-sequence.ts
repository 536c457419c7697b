import type { PartPlan } from '@tinwright/core';
import type { Shop } from '../../machines/shop.js';
import { findPlan } from '../search/find-plan.js';
import { type PartToBend, problemOf } from '../search/problem.js';
import { bendStep } from './bend-step.js';
import { mendsFor } from './mends.js';
import type { Sequence } from './plan.js';
import { reasonsOf } from './reasons.js';
import { smallestCores } from './smallest-core.js';

/** A planned part as the planner of bends wants it. */
export function partToBend({ name, part, material, mass, flat }: PartPlan): PartToBend {
  return { name, part, material, mass, blank: flat.blank.max };
}

/**
 * The order in which a part is bent in a shop: the cheapest by the shop's costs, or why there is none and what would
 * change that. Same part, same shop, same plan.
 */
export function planSequence(plan: PartPlan, shop: Shop): Sequence {
  const given = partToBend(plan);
  const problem = problemOf(given, shop);
  const found = findPlan(problem);
  const base = { part: plan.name, shop: shop.name, bound: found.bound, expanded: found.expanded };
  if (found.moves !== null) {
    const gap = found.cost === 0 ? 0 : Math.max(0, (found.cost - found.bound) / found.cost);
    const { moves } = found;
    const steps = moves.map((m, i) => bendStep(problem, m, plan, shop, moves[i - 1]?.position ?? null));
    const status = gap < 1e-9 ? 'optimal' : 'feasible';
    const proved = status === 'optimal';
    return { ...base, status, proved, steps, seconds: found.cost, gap, reasons: [], mends: [] };
  }
  const cores = smallestCores(problem);
  const input = { problem, shop, material: plan.material.name, longest: Math.max(...given.blank) };
  const reasons = reasonsOf(input, cores);
  const ids = cores.map((core) => core.map((p) => problem.work.tree.panels[p]?.id ?? ''));
  return {
    ...base,
    status: 'infeasible',
    proved: found.bound === Infinity || cores.length > 0,
    steps: [],
    seconds: 0,
    gap: 0,
    reasons,
    mends: cores.length === 0 ? [] : mendsFor(plan, shop, ids, reasons),
  };
}
