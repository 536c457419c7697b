import { keyOf, sameMask } from '../part/mask.js';
import { boundOf } from './bound.js';
import { byPromise } from './by-promise.js';
import { riseOf } from './rise.js';
import {
  clean,
  type Force,
  type Found,
  type Node,
  type Problem,
  pathTo,
  START,
  successors,
} from './states.js';

/**
 * A plan by keeping the most promising states after every operation: for parts too large to search through.
 * @param width states kept
 * @param force also take mountings with an obstacle, at a price no plan reaches: finds the fewest
 */
export function bestFew(problem: Problem, width: number, force: Force = 'keep'): Found {
  const bound = boundOf(problem);
  const risen = riseOf(problem);
  const rise = (n: Node) => (force === 'force' ? 0 : risen(n.done, n.at));
  const usable = (n: Node) => force === 'force' || clean(problem, n);
  let layer: readonly Node[] = [START];
  let finished: Node | null = null;
  let expanded = 0;
  while (layer.length > 0) {
    expanded += layer.length;
    const limit: number = finished?.cost ?? Infinity;
    const made = layer.flatMap((node) =>
      successors(problem, node, force).map((s) => ({ ...s, total: s.cost + bound(s.done, s.at) })),
    );
    const nodes = cheapest(made.filter((n) => n.total < limit));
    const ends = nodes.filter((n) => sameMask(n.done, problem.work.all) && usable(n));
    finished = ends.reduce<Node | null>((a, b) => (a === null || b.cost < a.cost ? b : a), finished);
    layer = taken(
      nodes.filter((n) => !sameMask(n.done, problem.work.all)),
      { width, limit, rise, usable },
    );
  }
  const moves = finished === null ? null : pathTo(finished);
  return { moves, bound: 0, cost: finished?.cost ?? Infinity, expanded };
}

interface Choice {
  readonly width: number;
  /** A plan there is costs this. */
  readonly limit: number;
  readonly rise: (node: Node) => number;
  readonly usable: (node: Node) => boolean;
}

/** The most promising few that can be used. */
function taken(nodes: readonly Node[], { width, limit, rise, usable }: Choice): readonly Node[] {
  const found: Node[] = [];
  for (const node of byPromise(nodes, rise)) {
    if (found.length === width || node.total >= limit) break;
    if (usable(node)) found.push(node);
  }
  return found;
}

/** Every state by an operation once, by the cheapest way to it. */
function cheapest(nodes: readonly Node[]): readonly Node[] {
  const best = new Map<string, Node>();
  for (const node of nodes) {
    const key = `${keyOf(node.done)} ${node.at?.id} ${node.move?.mounting.operation.index}`;
    const known = best.get(key);
    if (known === undefined || node.cost < known.cost) best.set(key, node);
  }
  return [...best.values()];
}
