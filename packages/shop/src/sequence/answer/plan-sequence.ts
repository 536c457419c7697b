import type { PartPlan, StopSignal } from '@tinwright/core';
import { breath, revivePart } from '@tinwright/core/internal';
import type { Shop } from '../../machines/shop.js';
import { NONE } from '../part/mask.js';
import { planSearch } from '../search/find-plan.js';
import { type PartToBend, problemOf } from '../search/problem.js';
import type { BendProblem } from '../search/states.js';
import { whole } from '../search/whole.js';
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
  return whole(sequenceSteps(plan, shop, options));
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
  return inSlices(sequenceSteps(plan, shop, options));
}

/** How a part's bend order is looked for. */
export interface PlanSequenceOptions {
  /** Ends the search, with the reason it was aborted for. */
  readonly signal?: StopSignal;
  /** Called now and then with the seconds of the cheapest plan so far, infinite before there is one. */
  readonly onProgress?: (seconds: number) => void;
}

const SLICE = 16; // looks between two pauses: some ten milliseconds for large parts

/** Work that stops to let others work every so many of its steps. */
export async function inSlices<T>(steps: Generator<undefined, T>): Promise<T> {
  for (let turn = 1; ; turn++) {
    const step = steps.next();
    if (step.done) return step.value;
    if (turn % SLICE === 0) await breath();
  }
}

/** The search, a little at a time. */
export function* sequenceSteps(
  part: PartPlan,
  shop: Shop,
  { signal, onProgress }: PlanSequenceOptions,
): Generator<undefined, Sequence> {
  signal?.throwIfAborted();
  const plan = revivePart(part);
  const given = partToBend(plan);
  const problem = problemOf(given, shop);
  const search = planSearch(problem);
  let step = search.next();
  while (!step.done) {
    signal?.throwIfAborted();
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
    mends: cores.length === 0 ? [] : mendsFor(plan, shop, ids, reasons),
  };
}
