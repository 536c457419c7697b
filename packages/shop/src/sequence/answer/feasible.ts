import type { PartPlan } from '@tinwright/core';
import type { Shop } from '../../machines/shop.js';
import type { DieChoice } from '../../tools/press-setting.js';
import { dive } from '../search/dive.js';
import { anyPlan } from '../search/find-plan.js';
import type { BendProblem, Move } from '../search/states.js';
import { partToBend } from './planned-sequence.js';
import { problemsOf } from './problems.js';
import { onlySteps, stepsWith } from './smallest-core.js';

/** A part with other parameters, or in another shop, of which is asked whether it can be bent. */
export interface Variant {
  readonly plan: PartPlan;
  readonly params: unknown;
  readonly shop: Shop;
  /** Bends that cannot all be made as the part and the shop are, by their ids. */
  readonly cores: readonly (readonly string[])[];
  /** Dies that may change that. */
  readonly dies: DieChoice;
}

/** The problems of a variant; none where there is no such part. */
function problemsFor({ plan, params, shop, dies }: Variant): readonly (() => BendProblem)[] {
  try {
    const part = plan.family.part(params, plan.sheet);
    return problemsOf({ ...partToBend(plan), part }, shop, dies);
  } catch {
    return []; // corners leave nothing at this size
  }
}

const MOST_WHOLE = 2000; // states looked at for a plan of a changed part: what is told has to be found soon
const MOST_STATES = 500;

/** True when those of the bends can all be made, the others left flat: a quick look before a whole plan is tried. */
function someGo(problem: BendProblem, cores: Variant['cores']): boolean {
  const { tree } = problem.work;
  return cores.every((core) => {
    const panels = tree.panels.flatMap((p, i) => (core.includes(p.id) ? [i] : []));
    return dive(onlySteps(problem, stepsWith(problem, panels)), MOST_STATES).moves !== null;
  });
}

/** True when what could not be made can be, the other bends left flat: with the widest choice of dies, asked once. */
export function someFeasible(variant: Variant): boolean {
  return someGoWith(problemsFor(variant), variant.cores);
}

const someGoWith = (problems: readonly (() => BendProblem)[], cores: Variant['cores']): boolean => {
  const widest = problems.at(-1);
  return widest !== undefined && someGo(widest(), cores);
};

/** A plan of a variant, whatever it costs; null where none is soon found. */
export function planOf(variant: Variant): readonly Move[] | null {
  const problems = problemsFor(variant);
  if (!someGoWith(problems, variant.cores)) return null;
  for (const next of problems) {
    const { moves } = anyPlan(next(), MOST_WHOLE);
    if (moves !== null) return moves;
  }
  return null;
}
