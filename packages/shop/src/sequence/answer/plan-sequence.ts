import type { PartPlan, StopSignal } from '@tinwright/core';
import { atOnce, inTurns, type Pieces, revivePart } from '@tinwright/core/internal';
import type { Shop } from '../../machines/shop.js';
import { NONE } from '../part/mask.js';
import { planSearch } from '../search/find-plan.js';
import { type PartToBend, problemOf } from '../search/problem.js';
import type { BendProblem } from '../search/states.js';
import { bendStep } from './bend-step.js';
import { mendsFor } from './mends.js';
import type { Sequence } from './plan.js';
import { reasonsOf, stuckReasons } from './reasons.js';
import { smallestCores } from './smallest-core.js';

/** A planned part as the planner of bends wants it. */
export function partToBend({ name, part, material, mass, flat }: PartPlan): PartToBend {
  return { name, part, material, mass, blank: flat.blank.max };
}

/** True when a bend cannot be made on any machine whatever else is done: what is left out only made it easier. */
function neverBent({ work, stations }: BendProblem): boolean {
  return work.steps.some((step) =>
    work.operations
      .filter((o) => o.steps.includes(step.index))
      .every((o) => stations.every((s) => SIDES.every((held) => s.prospect(o, held, NONE) === null))),
  );
}

const SIDES = ['parent', 'child'] as const;

/**
 * The order in which a part is bent in a shop: the cheapest by the shop's costs, or why there is none and what would
 * change that. Same part, same shop, same plan.
 */
export function planSequence(plan: PartPlan, shop: Shop, options: PlanSequenceOptions = {}): Sequence {
  return atOnce(sequenceSteps(plan, shop, options), options.signal);
}

/**
 * The same, with room for other work on the way: a page stays alive, and a signal can be aborted.
 * @throws what the signal was aborted for
 */
export async function planSequenceAsync(
  plan: PartPlan,
  shop: Shop,
  options: PlanSequenceOptions = {},
): Promise<Sequence> {
  return inTurns(sequenceSteps(plan, shop, options), SLICE, options.signal);
}

/** How a part's bend order is looked for. */
export interface PlanSequenceOptions {
  /** Ends the search, with the reason it was aborted for. Asked every few states, and for each size that is tried as a mend. */
  readonly signal?: StopSignal;
  /** Called now and then with the seconds of the cheapest plan so far, infinite before there is one. */
  readonly onProgress?: (seconds: number) => void;
}

/** Looks between two pauses: some ten milliseconds for large parts. */
export const SLICE = 16;

/** The search, a little at a time. */
export function* sequenceSteps(
  part: PartPlan,
  shop: Shop,
  { signal, onProgress }: PlanSequenceOptions,
): Pieces<Sequence> {
  const plan = revivePart(part);
  const given = partToBend(plan);
  const problem = problemOf(given, shop);
  const search = planSearch(problem);
  let step = search.next();
  while (!step.done) {
    onProgress?.(step.value.cost);
    yield;
    step = search.next();
  }
  const found = step.value;
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
  const smallest = reasonsOf(input, cores);
  const reasons = smallest.length > 0 ? smallest : stuckReasons(input);
  const ids = cores.map((core) => core.map((p) => problem.work.tree.panels[p]?.id ?? ''));
  return {
    ...base,
    status: 'infeasible',
    proved: found.bound === Infinity || neverBent(problem),
    steps: [],
    seconds: 0,
    gap: 0,
    reasons,
    mends: cores.length === 0 ? [] : mendsFor(plan, shop, { cores: ids, reasons }, signal),
  };
}
