import type { PartPlan, StopSignal } from '@tinwright/core';
import { atOnce, inTurns, type Pieces, revivePart } from '@tinwright/core/internal';
import type { Shop } from '../../machines/shop.js';
import { NONE } from '../part/mask.js';
import { planSearch } from '../search/find-plan.js';
import type { BendProblem, FoundPlan } from '../search/states.js';
import { quickLook } from './feasible.js';
import { mendsFor } from './mends.js';
import type { Sequence } from './plan.js';
import { partToBend, plannedSequence } from './planned-sequence.js';
import { problemsOf } from './problems.js';
import { reasonsOf, stuckReasons } from './reasons.js';
import { smallestCores } from './smallest-core.js';

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
  const problems = problemsOf(given, shop);
  const widest = problems.at(-1) as (typeof problems)[number];
  // where no bend at all can come last, no choice of dies is searched
  const most = Math.ceil(FIRST / given.part.panels.length);
  if (quickLook(given, { dies: 'all', most })(shop) === 'none')
    return withoutPlan(widest(), plan, shop, NEVER, signal);
  for (const next of problems) {
    const problem = next();
    const found = yield* searched(problem, onProgress);
    const { moves } = found;
    if (moves !== null) return plannedSequence(problem, plan, shop, { ...found, moves });
    if (next === widest) return withoutPlan(problem, plan, shop, found, signal);
  }
  throw new RangeError(`no problem of ${plan.name}`);
}

const FIRST = 50; // states looked at before anything else, shared among panels: where there are many, each takes longer

/** What is found of a part that cannot be bent at all. */
const NEVER: FoundPlan = { moves: null, bound: Infinity, cost: Infinity, expanded: 0, toolsKept: false };

/** The cheapest plan of a problem, a little at a time. */
function* searched(problem: BendProblem, onProgress: PlanSequenceOptions['onProgress']): Pieces<FoundPlan> {
  const search = planSearch(problem);
  let step = search.next();
  while (!step.done) {
    onProgress?.(step.value.cost);
    yield;
    step = search.next();
  }
  return step.value;
}

/** Why a part has no plan, and what would change that. */
function withoutPlan(
  problem: BendProblem,
  plan: PartPlan,
  shop: Shop,
  found: FoundPlan,
  signal: StopSignal | undefined,
): Sequence {
  const given = partToBend(plan);
  const cores = smallestCores(problem);
  const input = { problem, shop, material: plan.material.name, longest: Math.max(...given.blank) };
  const smallest = reasonsOf(input, cores);
  const reasons = smallest.length > 0 ? smallest : stuckReasons(input);
  const ids = cores.map((core) => core.map((p) => problem.work.tree.panels[p]?.id ?? ''));
  return {
    part: plan.name,
    shop: shop.name,
    bound: found.bound,
    expanded: found.expanded,
    status: 'infeasible',
    proved: found.bound === Infinity || neverBent(problem),
    toolsKept: false,
    steps: [],
    seconds: 0,
    gap: 0,
    reasons,
    mends: cores.length === 0 ? [] : mendsFor(plan, shop, { cores: ids, reasons }, signal),
  };
}
