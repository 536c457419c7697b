import { atOnce } from '@tinwright/core/internal';
import { ancestors } from '../part/fold-tree.js';
import { sameMask, stepsOf } from '../part/mask.js';
import { isOpen, type LineStroke, type Work } from '../part/operations.js';
import { type BendProblem, clean, type FoundMoves, type Node, pathTo, START, stepTo } from './states.js';

/** Orders a setter tries first: from one end of the part to the other, from the outside inwards, and the reverse of both. */
export function sweepOrders({ tree }: Work): readonly ((a: LineStroke, b: LineStroke) => number)[] {
  const depth = (o: LineStroke) => ancestors(tree, o.panels[0] as number).length;
  const joined = (a: LineStroke, b: LineStroke) => b.steps.length - a.steps.length;
  return [
    (a, b) => joined(a, b) || a.index - b.index,
    (a, b) => joined(a, b) || b.index - a.index,
    (a, b) => depth(b) - depth(a) || joined(a, b) || a.index - b.index,
    (a, b) => depth(a) - depth(b) || joined(a, b) || a.index - b.index,
  ];
}

/**
 * Plans a setter sees at once, at every step the first bend in such an order that goes. The cheapest of those that come
 * to an end; each looks at few states, however many bends there are.
 */
export function* sweeps(problem: BendProblem): Generator<number, FoundMoves> {
  const { operations, steps } = problem.work;
  const orders = sweepOrders(problem.work);
  const ends: Node[] = [];
  for (const order of orders) {
    const end = yield* swept(problem, operations.toSorted(order));
    if (sameMask(end.done, problem.work.all)) ends.push(end);
  }
  const [first] = ends.toSorted((a, b) => a.cost - b.cost);
  const expanded = orders.length * steps.length;
  if (first === undefined) return { moves: null, bound: 0, cost: Infinity, expanded };
  return { moves: pathTo(first), bound: 0, cost: first.cost, expanded };
}

/** The state in which a setter is stuck who goes on as far as he can: of all such orders the one with the most steps done. */
export function furthest(problem: BendProblem): Node {
  const ends = sweepOrders(problem.work).map((order) =>
    atOnce(swept(problem, problem.work.operations.toSorted(order))),
  );
  const count = ({ done }: Node) => stepsOf(done).length;
  return ends.reduce((a, b) => (count(b) > count(a) ? b : a));
}

/** As far as an order goes. */
function* swept(problem: BendProblem, order: readonly LineStroke[]): Generator<number, Node> {
  const { all } = problem.work;
  let node: Node = START;
  while (!sameMask(node.done, all)) {
    yield node.cost;
    const next = nextOf(problem, node, order);
    if (next === null) return node;
    node = next;
  }
  return node;
}

/** The first operation of an order that goes, on the machine and side that cost least. */
function nextOf(problem: BendProblem, node: Node, order: readonly LineStroke[]): Node | null {
  const open = order.filter((o) => isOpen(o, node.done));
  // a hem that is folded is closed before anything else
  const closing = open.filter((o) => o.action === 'close');
  for (const operation of closing.length > 0 ? closing : open) {
    const ways = (problem.ways[operation.index] ?? [])
      .map((way) => ({ way, least: problem.positions.least(node.at, way) }))
      .toSorted((a, b) => a.least - b.least);
    let best: Node | null = null;
    for (const { way, least } of ways) {
      // geometry is asked only of what may still be cheaper
      if (best !== null && node.cost + least >= best.cost) break;
      const made = stepTo(problem, node, way);
      if (made !== null && clean(problem, made) && (best === null || made.cost < best.cost)) best = made;
    }
    if (best !== null) return best;
  }
  return null;
}
