import type { PartPlan } from '@tinwright/core';
import { type Pieces, revivePart } from '@tinwright/core/internal';
import type { Shop } from '../../machines/shop.js';
import { cheapest } from '../search/cheapest.js';
import { guideOf } from '../search/guide.js';
import { problemOf } from '../search/problem.js';
import { inSettingOrder, settingsOf } from '../search/setting-order.js';
import type { Sequence } from './plan.js';
import { partToBend, plannedSequence } from './planned-sequence.js';

const MOST_STEPS = 20; // of a part that is planned again
const MOST_SETTINGS = 3; // tried in every order
const MOST_WAYS = 2000; // tried for each order

/**
 * Plans of a part that set its machines in another order, each the cheapest in its order: dearer for the part alone, but
 * they may go better with those of other parts.
 * @param more seconds that such a plan may take above the cheapest
 */
export function* otherOrders(
  part: PartPlan,
  shop: Shop,
  best: Sequence,
  more: number,
): Pieces<readonly Sequence[]> {
  const plan = revivePart(part);
  if (best.steps.length < 2 || best.steps.length > MOST_STEPS) return [];
  const problem = problemOf(partToBend(plan), shop);
  const settings = settingsOf(problem);
  if (settings.length < 2 || settings.length > MOST_SETTINGS) return [];
  const found: Sequence[] = [];
  for (const order of permutations(settings)) {
    const ordered = inSettingOrder(problem, order);
    const search = cheapest(ordered, guideOf(ordered), MOST_WAYS, () => best.seconds + more);
    let step = search.next();
    while (!step.done) {
      yield;
      step = search.next();
    }
    const { moves, cost } = step.value;
    // what is known of every order holds for this one
    if (moves !== null)
      found.push(
        plannedSequence(problem, plan, shop, {
          ...step.value,
          moves,
          cost,
          bound: best.bound,
          toolsKept: best.toolsKept,
        }),
      );
  }
  return found;
}

function permutations<T>(list: readonly T[]): readonly (readonly T[])[] {
  if (list.length < 2) return [list];
  return list.flatMap((first, i) =>
    permutations(list.filter((_, k) => k !== i)).map((rest) => [first, ...rest]),
  );
}
