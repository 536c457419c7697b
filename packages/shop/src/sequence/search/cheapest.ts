import { keyOf, sameMask } from '../part/mask.js';
import { alikeOf } from './alike.js';
import { type Guide, rounded } from './guide.js';
import { Heap } from './heap.js';
import { type PackedHopes, packedHopes } from './packed-hopes.js';
import { type BendProblem, clean, type FoundMoves, type Node, pathTo, START, stepTo } from './states.js';
import type { Way } from './ways.js';

/** A state in the queue, looked at or not, or the ways on from one that have not been tried. */
interface Entry {
  readonly node: Node;
  /** The queue knows what this state cannot do without. */
  readonly raised: boolean;
  readonly hopes: PackedHopes | null;
  readonly next: number;
}

/**
 * Cheapest order, sides, stations and tools by A*: a state is the steps done and the position the part is in. A state is
 * left out when another with the same steps done and the same tools on could change to its position at no more cost, or one
 * that is like that when the part is turned.
 * Geometry is asked for one way at a time, when no other promises more (partial expansion: Yoshizumi, Miura, Ishida
 * 2000). Tools are changed only where those that are on do not serve, and then by the fewest pieces. Ties go to the
 * state that is further on, then to the one that was found first, so the same part gives the same plan.
 * @param most ways tried before it gives up; the bound then stands without a plan
 * @param limit cost of the best plan there is so far: only a cheaper one is looked for, and the bound never passes it
 * @returns a search that goes on a little whenever it is asked for the seconds that no plan goes under
 */
export function* cheapest(
  problem: BendProblem,
  guide: Guide,
  most: number,
  limit: () => number,
): Generator<number, FoundMoves> {
  const { work } = problem;
  const { bound, rise } = guide;
  const ways = new Map(problem.ways.flat().map((w) => [w.index, w]));
  const alike = alikeOf(problem);
  const reached = new Map<number | string, Reached[]>();
  const isNews = newsBook();
  const open = new Heap<Entry>();
  const queue = (entry: Entry, least: number) => {
    // what is further on comes first among equals
    if (least < limit() - EVEN) open.push(entry, rounded(least), -rounded(entry.node.cost));
  };
  const queueState = (node: Node, more: number, raised: boolean) =>
    queue({ node, raised, hopes: null, next: 0 }, node.cost + bound(node.done, node.at) + more);
  const dominated = (node: Node): boolean => {
    const { key, at } = alike(node);
    return isDominated(problem, { at, cost: node.cost }, reached.get(key) ?? []);
  };
  queueState(START, 0, false);
  let [tried, expanded, turn] = [0, 0, 0];
  const answer = (moves: FoundMoves['moves'], least: number, cost: number): FoundMoves => ({
    moves,
    bound: Math.min(limit(), least),
    cost,
    expanded,
  });
  /** Try the next way on from a state, and leave the others for later. */
  const tryNext = ({ node, next }: Entry, hopes: PackedHopes, least: number): void => {
    tried += 1;
    const child = stepTo(problem, node, ways.get(hopes.ways[next] as number) as Way);
    if (child !== null && !dominated(child) && isNews(child)) queueState(child, 0, false);
    const after = hopes.least[next + 1];
    if (after !== undefined) queue({ node, raised: true, hopes, next: next + 1 }, Math.max(least, after));
  };
  /** True for a state that is reached like this for good; it is put back when it turns out to promise less. */
  const stands = ({ node, raised }: Entry): boolean => {
    if (dominated(node) || !clean(problem, node)) return false;
    const more = raised ? 0 : rise(node.done, node.at);
    if (more > 0 && more < Infinity) queueState(node, more, true);
    return more === 0;
  };
  for (let top = open.popItem(); top !== undefined; top = open.popItem()) {
    turn += 1;
    if (turn % SLICE === 0) yield top.key;
    const { node, hopes } = top.value;
    if (tried >= most) return answer(null, top.key, Infinity);
    if (top.key >= limit() - EVEN) break;
    if (hopes !== null) tryNext(top.value, hopes, top.key);
    else if (stands(top.value)) {
      if (sameMask(node.done, work.all)) return answer(pathTo(node), node.cost, node.cost);
      const { key, at } = alike(node);
      reached.set(key, [...(reached.get(key) ?? []), { at, cost: node.cost }]);
      expanded += 1;
      const on = guide.hopes(node, limit());
      if (on[0] !== undefined)
        queue({ node, raised: true, hopes: packedHopes(on), next: 0 }, Math.max(top.key, on[0].least));
    }
  }
  return answer(null, Infinity, Infinity);
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
const SLICE = 32;
const EVEN = 1e-6; // s

/** A state that was looked at, or one like it. */
type Reached = Pick<Node, 'at' | 'cost'>;

/** True when one of the states with the same steps done comes to this one's position at no more cost. */
function isDominated({ positions }: BendProblem, { at, cost }: Reached, others: readonly Reached[]): boolean {
  for (const o of others)
    if (o.cost <= cost && at !== null && o.at !== null && o.cost + positions.change(o.at, at) <= cost + 1e-9)
      return true;
  return false;
}
