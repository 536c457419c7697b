import { ancestors } from '../part/fold-tree.js';
import { sameMask } from '../part/mask.js';
import { isOpen, type Operation } from '../part/operations.js';
import { clean, type Found, type Node, type Problem, pathTo, START, stepTo } from './states.js';

/**
 * Plans a setter sees at once: from one end of the part to the other, from either side, and from the outside inwards or
 * back, at every step the first bend in that order that goes. The cheapest of those that come to an end; each looks at
 * few states, however many bends there are.
 */
export function sweeps(problem: Problem): Found {
  const { operations, tree } = problem.work;
  const depth = (o: Operation) => ancestors(tree, o.panels[0] as number).length;
  const joined = (a: Operation, b: Operation) => b.steps.length - a.steps.length;
  const orders: readonly ((a: Operation, b: Operation) => number)[] = [
    (a, b) => joined(a, b) || a.index - b.index,
    (a, b) => joined(a, b) || b.index - a.index,
    (a, b) => depth(b) - depth(a) || joined(a, b) || a.index - b.index,
    (a, b) => depth(a) - depth(b) || joined(a, b) || a.index - b.index,
  ];
  const ends = orders.flatMap((order) => {
    const end = swept(problem, operations.toSorted(order));
    return end === null ? [] : [end];
  });
  const [first] = ends.toSorted((a, b) => a.cost - b.cost);
  const expanded = orders.length * problem.work.steps.length;
  if (first === undefined) return { moves: null, bound: 0, cost: Infinity, expanded };
  return { moves: pathTo(first), bound: 0, cost: first.cost, expanded };
}

function swept(problem: Problem, order: readonly Operation[]): Node | null {
  const { all } = problem.work;
  let node: Node = START;
  while (!sameMask(node.done, all)) {
    const next = nextOf(problem, node, order);
    if (next === null) return null;
    node = next;
  }
  return node;
}

/** The first operation of an order that goes, on the machine and side that cost least. */
function nextOf(problem: Problem, node: Node, order: readonly Operation[]): Node | null {
  const open = order.filter((o) => isOpen(o, node.done));
  // a hem that is folded is closed before anything else
  const closing = open.filter((o) => o.action === 'close');
  for (const operation of closing.length > 0 ? closing : open) {
    const ways = problem.stations.flatMap((station) =>
      (['parent', 'child'] as const).flatMap((held) => {
        const made = stepTo(problem, node, station.mount(operation, held, node.done), station, 'keep');
        return made !== null && clean(problem, made) ? [made] : [];
      }),
    );
    const [best] = ways.toSorted((a, b) => a.cost - b.cost);
    if (best !== undefined) return best;
  }
  return null;
}
