// Steps of a plan put elsewhere where that takes less.
import { atOnce } from '@tinwright/core/internal';
import { DEFAULT_COSTS, verifySequence } from '@tinwright/shop';
import { expect, test } from 'vitest';
import { partToBend, plannedSequence } from '../../src/sequence/answer/planned-sequence.js';
import { planSearch } from '../../src/sequence/search/find-plan.js';
import { problemOf } from '../../src/sequence/search/problem.js';
import { reinserted } from '../../src/sequence/search/reinserted.js';
import { type Move, type Node, openWays, pathTo, START, stepTo } from '../../src/sequence/search/states.js';
import { pressShop, straight, vDie } from '../press-shop.js';
import { planned } from '../shops.js';

const shop = pressShop([straight(10)], [vDie(8, 10)]);
const part = planned({
  family: 'bent-strip',
  width: 60,
  legs: [40, 40, 55, 70, 55, 40, 40],
  angles: [45, -45, 45, 45, -45, 45],
});
const problem = problemOf(partToBend(part), { ...shop, costs: DEFAULT_COSTS });

/** A plan that always takes the dearest step. */
function dearest(): readonly Move[] {
  let node: Node = START;
  for (;;) {
    const from = node;
    const [next] = openWays(problem, from)
      .flatMap((way) => stepTo(problem, from, way) ?? [])
      .toSorted((a, b) => b.cost - a.cost);
    if (next === undefined) return pathTo(node);
    node = next;
  }
}

const dear = dearest();
const better = (most: number) => atOnce(reinserted(problem, dear, most));

test('a dear plan becomes cheaper and stays a plan: every step once, at the seconds it says', () => {
  const found = better(Infinity);
  expect(dear.length).toBe(6);
  expect(found.cost).toBeLessThan(0.9 * (dear.at(-1)?.cost ?? 0));
  expect(found.moves?.at(-1)?.cost).toBe(found.cost);
  expect(new Set(found.moves?.map((m) => m.mounting.operation.index)).size).toBe(6);
  const whole = { ...found, moves: found.moves ?? [], toolsKept: false };
  const { steps } = plannedSequence(problem, part, shop, whole);
  expect(verifySequence(part.flat, steps, shop)).toEqual([]);
});

test('never under the cheapest plan, which nothing is left to be saved of', () => {
  const least = atOnce(planSearch(problem));
  expect(least.bound).toBe(least.cost);
  expect(better(Infinity).cost).toBeGreaterThanOrEqual(least.cost);
  expect(atOnce(reinserted(problem, least.moves ?? [], Infinity)).cost).toBe(least.cost);
});

test('without a try it is the plan it was', () => {
  expect(better(0).cost).toBe(dear.at(-1)?.cost);
  expect(better(0).moves?.map((m) => m.mounting.operation.index)).toEqual(
    dear.map((m) => m.mounting.operation.index),
  );
});
