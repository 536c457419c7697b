import { keyOf, sameMask } from '../part/mask.js';
import { boundOf } from './bound.js';
import { Heap } from './heap.js';
import { riseOf } from './rise.js';
import { clean, type Found, type Node, type Problem, pathTo, START, successors } from './states.js';

/**
 * Cheapest order, sides, stations and tools by A*: a state is the steps done and the position the part is in. A state is
 * left out when another with the same steps done and the same tools on could change to its position at no more cost.
 * Tools are changed only where those that are on do not serve, and then by the fewest pieces. Ties go to the state that
 * is further on, then to the one that was found first, so the same part gives the same plan.
 * @param most states made before it gives up; the bound then stands without a plan
 */
export function cheapest(problem: Problem, most: number): Found {
  const { work } = problem;
  const bound = boundOf(problem);
  const rise = riseOf(problem);
  const reached = new Map<number | string, Node[]>();
  const isNews = newsBook();
  const open = new Heap<Node>();
  // what is further on comes first among equals
  const least = (node: Node) => node.cost + bound(node.done, node.at);
  const queue = (node: Node, more: number) =>
    open.push(node, rounded(least(node) + more), -rounded(node.cost));
  const follow = (node: Node): number => {
    const all = successors(problem, node, 'keep');
    for (const next of all)
      if (!dominated(problem, next, reached.get(keyOf(next.done)) ?? []) && isNews(next)) queue(next, 0);
    return all.length;
  };
  queue(START, 0);
  let [made, expanded] = [0, 0];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    const key = keyOf(node.done);
    const others = reached.get(key) ?? [];
    if (dominated(problem, node, others) || !clean(problem, node)) continue;
    const more = node.raised ? 0 : rise(node.done, node.at);
    if (more > 0) {
      if (more < Infinity) queue({ ...node, raised: true }, more);
      continue;
    }
    if (sameMask(node.done, work.all))
      return { moves: pathTo(node), bound: node.cost, cost: node.cost, expanded };
    if (made >= most) return { moves: null, bound: least(node), cost: Infinity, expanded };
    others.push(node);
    reached.set(key, others);
    expanded += 1;
    made += follow(node);
  }
  return { moves: null, bound: Infinity, cost: Infinity, expanded };
}

/** Tells the cheapest way so far to a state by its last operation from dearer ones. */
function newsBook(): (node: Node) => boolean {
  const waiting = new Map<number | string, Map<number, number>>();
  return ({ done, at, move, cost }) => {
    const key = keyOf(done);
    const known = waiting.get(key) ?? new Map<number, number>();
    waiting.set(key, known);
    const name = (at?.id ?? 0) * MOST_OPERATIONS + (move?.mounting.operation.index ?? 0);
    if ((known.get(name) ?? Infinity) <= cost) return false;
    known.set(name, cost);
    return true;
  };
}

const MOST_OPERATIONS = 1024;
// sums in another order are equal
const rounded = (seconds: number) => Math.round(seconds * 1e6) / 1e6;

/** True when one of the states with the same steps done comes to this one's position at no more cost. */
function dominated({ positions }: Problem, { at, cost }: Node, others: readonly Node[]): boolean {
  for (const o of others)
    if (o.cost <= cost && at !== null && o.at !== null && o.cost + positions.change(o.at, at) <= cost + 1e-9)
      return true;
  return false;
}
