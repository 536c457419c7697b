import type { PartPlan } from '@tinwright/core';
import type { Shop } from '../../machines/shop.js';
import { anyPlan, problemOf } from '../search/find-plan.js';
import type { Move, Problem } from '../search/states.js';

/** The search for a part with other parameters; null where there is no such part. */
function problemFor(plan: PartPlan, params: unknown, shop: Shop): Problem | null {
  if (plan.family.check(params, plan.sheet).length > 0) return null;
  try {
    const part = plan.family.part(params, plan.sheet);
    const { material, mass, name } = plan;
    return problemOf({ name, part, material, mass, blank: plan.flat.blank.max }, shop);
  } catch {
    return null; // corners leave nothing at this size
  }
}

/** True when a part of these parameters can be bent in a shop. */
export function feasible(plan: PartPlan, params: unknown, shop: Shop): boolean {
  const problem = problemFor(plan, params, shop);
  return problem !== null && anyPlan(problem).moves !== null;
}

/**
 * True when strokes that failed would go, at these parameters and in the state they were tried in. A quick look: another
 * order may still stop the part, or help it.
 */
export function mountable(plan: PartPlan, params: unknown, shop: Shop, failed: readonly Move[]): boolean {
  const problem = problemFor(plan, params, shop);
  return problem !== null && failed.every((move) => goes(problem, move));
}

function goes(problem: Problem, { mounting, done }: Move): boolean {
  const operation = problem.work.operations[mounting.operation.index];
  if (operation === undefined) return false;
  return problem.stations.some((station) =>
    (['parent', 'child'] as const).some((held) => {
      const now = station.mount(operation, held, done);
      return now.obstacle === null && problem.positions.place(null, now, station, false) !== null;
    }),
  );
}
