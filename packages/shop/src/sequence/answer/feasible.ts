import type { PartPlan } from '@tinwright/core';
import type { Shop } from '../../machines/shop.js';
import { dive } from '../search/dive.js';
import { anyPlan } from '../search/find-plan.js';
import { problemOf } from '../search/problem.js';
import type { BendProblem } from '../search/states.js';
import { onlySteps, stepsWith } from './smallest-core.js';

/** The search for a part with other parameters; null where there is no such part. */
function problemFor(plan: PartPlan, params: unknown, shop: Shop): BendProblem | null {
  try {
    const part = plan.family.part(params, plan.sheet);
    const { material, mass, name } = plan;
    return problemOf({ name, part, material, mass, blank: plan.flat.blank.max }, shop);
  } catch {
    return null; // corners leave nothing at this size
  }
}

const MOST_WHOLE = 2000; // states looked at for a plan of a changed part: what is told has to be found soon

/** True when a part of these parameters can be bent in a shop. */
export function feasible(plan: PartPlan, params: unknown, shop: Shop): boolean {
  const problem = problemFor(plan, params, shop);
  return problem !== null && anyPlan(problem, MOST_WHOLE).moves !== null;
}

const MOST_STATES = 500;

/** True when some of the bends can all be made, the others left flat: a quick look before a whole plan is tried. */
export function someFeasible(
  plan: PartPlan,
  params: unknown,
  shop: Shop,
  cores: readonly (readonly string[])[],
): boolean {
  const problem = problemFor(plan, params, shop);
  if (problem === null) return false;
  const { tree } = problem.work;
  return cores.every((core) => {
    const panels = tree.panels.flatMap((p, i) => (core.includes(p.id) ? [i] : []));
    return dive(onlySteps(problem, stepsWith(problem, panels)), MOST_STATES).moves !== null;
  });
}
