import { boundOf } from './bound.js';
import { sameMask } from './mask.js';
import {
  type Force,
  type Found,
  type Node,
  order,
  type Problem,
  pathTo,
  START,
  stateKey,
  successors,
} from './states.js';

/**
 * A plan by keeping the most promising states after every operation: for parts too large to search through.
 * @param width states kept
 * @param force also take mountings with an obstacle, at a price no plan reaches: finds the fewest
 */
export function beam(problem: Problem, width: number, force: Force = 'keep'): Found {
  const bound = boundOf(problem);
  let layer: readonly Node[] = [START];
  let finished: Node | null = null;
  let expanded = 0;
  while (layer.length > 0) {
    expanded += layer.length;
    const limit: number = finished?.cost ?? Infinity;
    const made = layer.flatMap((node) =>
      [...successors(problem, node, force)].map((s) => ({ ...s, total: s.cost + bound(s.done, s.at) })),
    );
    const nodes = cheapest(made.filter((n) => n.total < limit));
    const ends = nodes.filter((n) => sameMask(n.done, problem.work.all));
    finished = ends.reduce<Node | null>((a, b) => (a === null || b.cost < a.cost ? b : a), finished);
    layer = nodes
      .filter((n) => !sameMask(n.done, problem.work.all))
      .toSorted((a, b) => a.total - b.total || order(a, b))
      .slice(0, width);
  }
  const moves = finished === null ? null : pathTo(finished);
  return { moves, bound: 0, cost: finished?.cost ?? Infinity, expanded };
}

/** Every state once, by the cheapest way to it. */
function cheapest(nodes: readonly Node[]): readonly Node[] {
  const best = new Map<string, Node>();
  for (const node of nodes) {
    const key = stateKey(node);
    const known = best.get(key);
    if (known === undefined || node.cost < known.cost) best.set(key, node);
  }
  return [...best.values()];
}
