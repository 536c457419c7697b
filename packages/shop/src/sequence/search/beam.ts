import { keyOf, sameMask } from '../part/mask.js';
import type { LineStroke } from '../part/operations.js';
import type { Guide, Hope } from './guide.js';
import { Heap } from './heap.js';
import { type BendProblem, clean, type FoundMoves, type Node, pathTo, START, stepTo } from './states.js';

/** How a beam goes. */
export interface BeamInput {
  /** States kept after every operation. */
  readonly width: number;
  /** Among states that promise the same, the one whose last operation comes first by this. */
  readonly rank: (operation: LineStroke) => number;
  /** No operation is taken so many places after the first one that is left. */
  readonly ahead: number;
  /** Cost of a plan there is: only a cheaper one is looked for. */
  readonly limit: number;
}

/** A way on from a state that has not been tried, or the state it leads to. */
interface Entry {
  readonly from: Node;
  readonly hope: Hope;
  readonly node: Node | null;
}

/**
 * A plan by keeping the most promising few states after every operation (Lowerre's beam search, 1976). What a way
 * promises is known before geometry is asked, and it is asked only of those whose turn comes.
 */
export function* beam(problem: BendProblem, guide: Guide, input: BeamInput): Generator<number, FoundMoves> {
  let layer: readonly Node[] = [START];
  let finished: Node | null = null;
  let expanded = 0;
  while (layer.length > 0) {
    expanded += layer.length;
    const limit: number = finished?.cost ?? input.limit;
    const next: readonly Node[] = yield* layerAfter(problem, guide, layer, { ...input, limit });
    const ends = next.filter((n) => sameMask(n.done, problem.work.all));
    finished = ends.reduce<Node | null>((a, b) => (a === null || b.cost < a.cost ? b : a), finished);
    layer = next.filter((n) => !ends.includes(n));
  }
  if (finished === null) return { moves: null, bound: 0, cost: Infinity, expanded };
  return { moves: pathTo(finished), bound: 0, cost: finished.cost, expanded };
}

/** The most promising few of all that can follow. */
function* layerAfter(
  problem: BendProblem,
  { bound, rise, hopes }: Guide,
  layer: readonly Node[],
  { width, ahead, rank, limit }: BeamInput,
): Generator<number, readonly Node[]> {
  const open = new Heap<Entry>();
  for (const from of layer)
    for (const hope of near(hopes(from, limit), rank, ahead))
      open.push({ from, hope, node: null }, hope.least, rank(hope.way.operation));
  const next: Node[] = [];
  const seen = new Set<string>();
  for (let item = open.popItem(); item !== undefined && next.length < width; item = open.popItem()) {
    const { from, hope, node } = item.value;
    if (node !== null) {
      next.push(node);
      continue;
    }
    yield open.size;
    const made = stepTo(problem, from, hope.way);
    const name = made === null ? '' : `${keyOf(made.done)} ${made.at?.id}`;
    if (made === null || seen.has(name) || !clean(problem, made)) continue;
    seen.add(name);
    const total = made.cost + bound(made.done, made.at) + rise(made.done, made.at);
    if (total < limit - 1e-6) open.push({ from, hope, node: made }, total, item.second);
  }
  return next;
}

/** The hopes of the operations near the first one that is left. */
function near(hopes: readonly Hope[], rank: BeamInput['rank'], ahead: number): readonly Hope[] {
  const first = Math.min(...hopes.map((h) => rank(h.way.operation)));
  return hopes.filter((h) => rank(h.way.operation) < first + ahead);
}
