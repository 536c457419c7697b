import { atOnce } from '@tinwright/core/internal';
import { keyOf, sameMask } from '../part/mask.js';
import { guideOf } from './guide.js';
import { type BendProblem, clean, type FoundMoves, type Node, pathTo, START, stepTo } from './states.js';

/**
 * Some plan, whatever it costs: depth first by what looks cheapest, never twice into steps that lead nowhere. Whether
 * the rest can be bent hangs on what is done alone, not on the way to it.
 * @param most states looked at before it gives up: the bound is then 0, and infinite where there is no plan
 */
export function dive(problem: BendProblem, most: number): FoundMoves {
  return atOnce(dives(problem, most));
}

/** The same a little at a time, state by state. */
export function* dives(problem: BendProblem, most: number): Generator<number, FoundMoves> {
  const { rise, hopes } = guideOf(problem);
  const dead = new Set<number | string>();
  let expanded = 0;
  function* from(node: Node): Generator<number, Node | null> {
    if (sameMask(node.done, problem.work.all)) return node;
    const key = keyOf(node.done);
    if (dead.has(key) || expanded >= most || rise(node.done, node.at) === Infinity) return null;
    expanded += 1;
    yield node.cost;
    for (const { way } of hopes(node, Infinity)) {
      const next = stepTo(problem, node, way);
      const end = next === null || !clean(problem, next) ? null : yield* from(next);
      if (end !== null) return end;
    }
    dead.add(key);
    return null;
  }
  const end = yield* from(START);
  if (end !== null) return { moves: pathTo(end), bound: 0, cost: end.cost, expanded };
  return { moves: null, bound: expanded >= most ? 0 : Infinity, cost: Infinity, expanded };
}
