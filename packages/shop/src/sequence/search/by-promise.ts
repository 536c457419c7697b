import { Heap } from './heap.js';
import { type Node, order } from './states.js';

/**
 * States by the seconds a plan over them takes at least, those that lead nowhere left out. What a state cannot do without
 * is looked up only when its turn comes.
 */
export function* byPromise(nodes: readonly Node[], rise: (node: Node) => number): Generator<Node> {
  const open = new Heap<Node>();
  for (const node of nodes.toSorted(order)) open.push(node, node.total, 0);
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    if (node.raised) {
      yield node;
      continue;
    }
    const total = node.total + rise(node);
    if (total < Infinity) open.push({ ...node, total, raised: true }, total, -1);
  }
}
