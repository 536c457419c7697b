import { boundOf } from './bound.js';
import { Heap } from './heap.js';
import { NONE, sameMask } from './mask.js';
import { type Found, type Node, order, type Problem, pathTo, START, stateKey, successors } from './states.js';

/**
 * Cheapest order, sides, stations and tools by A*: a state is the steps done and the position the part is in; what is
 * left is bounded by its strokes, each shared among the steps it can do at once, and by the flips it cannot do without.
 * Ties go to the state that is further on, then to the lower operation, so the same part gives the same plan.
 * @param most states looked at before it gives up; the bound then stands without a plan
 */
export function search(problem: Problem, most: number): Found {
  const { work } = problem;
  const bound = boundOf(problem);
  const best = new Map<string, number>();
  const open = new Heap<Node>(before);
  open.push({ ...START, total: bound(NONE, null) });
  let expanded = 0;
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    if (sameMask(node.done, work.all))
      return { moves: pathTo(node), bound: node.cost, cost: node.cost, expanded };
    const key = stateKey(node);
    if ((best.get(key) ?? Infinity) < node.cost) continue;
    if (expanded >= most) return { moves: null, bound: node.total, cost: Infinity, expanded };
    expanded += 1;
    for (const next of successors(problem, node, 'keep')) {
      const nextKey = stateKey(next);
      if ((best.get(nextKey) ?? Infinity) <= next.cost) continue;
      best.set(nextKey, next.cost);
      open.push({ ...next, total: next.cost + bound(next.done, next.at) });
    }
  }
  return { moves: null, bound: Infinity, cost: Infinity, expanded };
}

function before(a: Node, b: Node): boolean {
  if (Math.abs(a.total - b.total) > 1e-9) return a.total < b.total;
  if (Math.abs(a.cost - b.cost) > 1e-9) return a.cost > b.cost;
  return order(a, b) < 0;
}
