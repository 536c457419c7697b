import { boundOf } from './bound.js';
import { Heap } from './heap.js';
import { keyOf, NONE, sameMask } from './mask.js';
import { clean, type Found, type Node, order, type Problem, pathTo, START, successors } from './states.js';

/**
 * Cheapest order, sides, stations and tools by A*: a state is the steps done and the position the part is in. A state is
 * left out when another with the same steps done and the same tools on could change to its position at no more cost.
 * Tools are changed only where those that are on do not serve, and then by the fewest pieces. Ties go to the state that
 * is further on, then to the lower operation, so the same part gives the same plan.
 * @param most states made before it gives up; the bound then stands without a plan
 */
export function search(problem: Problem, most: number): Found {
  const { work } = problem;
  const bound = boundOf(problem);
  const reached = new Map<number | string, Node[]>();
  const waiting = new Map<number | string, Map<number, number>>();
  const open = new Heap<Node>(before);
  open.push({ ...START, total: bound(NONE, null) });
  let [made, expanded] = [0, 0];
  /** True for the cheapest way so far to a state by its last operation. */
  const isNews = (node: Node): boolean => {
    const key = keyOf(node.done);
    const known = waiting.get(key) ?? new Map<number, number>();
    waiting.set(key, known);
    const name = (node.at?.id ?? 0) * MOST_OPERATIONS + (node.move?.mounting.operation.index ?? 0);
    if ((known.get(name) ?? Infinity) <= node.cost) return false;
    known.set(name, node.cost);
    return true;
  };
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    const key = keyOf(node.done);
    const others = reached.get(key) ?? [];
    if (dominated(problem, node, others) || !clean(problem, node)) continue;
    if (sameMask(node.done, work.all))
      return { moves: pathTo(node), bound: node.cost, cost: node.cost, expanded };
    if (made >= most) return { moves: null, bound: node.total, cost: Infinity, expanded };
    others.push(node);
    reached.set(key, others);
    expanded += 1;
    for (const next of successors(problem, node, 'keep')) {
      made += 1;
      if (dominated(problem, next, reached.get(keyOf(next.done)) ?? []) || !isNews(next)) continue;
      open.push({ ...next, total: next.cost + bound(next.done, next.at) });
    }
  }
  return { moves: null, bound: Infinity, cost: Infinity, expanded };
}

const MOST_OPERATIONS = 1024;

/** True when one of the states with the same steps done comes to this one's position at no more cost. */
function dominated({ positions }: Problem, { at, cost }: Node, others: readonly Node[]): boolean {
  for (const o of others)
    if (o.cost <= cost && at !== null && o.at !== null && o.cost + positions.change(o.at, at) <= cost + 1e-9)
      return true;
  return false;
}

function before(a: Node, b: Node): boolean {
  if (Math.abs(a.total - b.total) > 1e-9) return a.total < b.total;
  if (Math.abs(a.cost - b.cost) > 1e-9) return a.cost > b.cost;
  return order(a, b) < 0;
}
