import type { Costs } from '../machines/shop.js';
import { boundOf } from './bound.js';
import { moveCost, type Position, position, type Setting, strokeCost, type ToolBook } from './handling.js';
import { Heap } from './heap.js';
import type { Held } from './line.js';
import { keyOf, type Mask, NONE, sameMask, union } from './mask.js';
import { type Operation, openOperations, type Work } from './operations.js';
import type { Mounting, Station } from './station.js';

/** What a search needs to know of a part in a shop. */
export interface Problem {
  readonly work: Work;
  readonly stations: readonly Station[];
  readonly costs: Costs;
  readonly scale: number;
  readonly heading: (operation: Operation, held: Held) => number;
  readonly setting: (operation: Operation, station: Station) => Setting;
  /** Mountings found to fail by a closer look, by operation, side and state. */
  readonly refused: ReadonlySet<string>;
  /** Tools for a mounting: what is on when it serves, else a choice from the rack; `none` when there is none. */
  readonly tools: ToolBook;
}

/** An operation in its place in a plan. */
export interface Move {
  readonly mounting: Mounting;
  readonly position: Position;
  /** Seconds up to here. */
  readonly cost: number;
  /** State before it. */
  readonly done: Mask;
}

/** A way through all steps, or none. */
export interface Found {
  readonly moves: readonly Move[] | null;
  /** No plan costs less. */
  readonly bound: number;
  readonly cost: number;
  readonly expanded: number;
}

interface Node {
  readonly done: Mask;
  readonly at: Position | null;
  readonly cost: number;
  readonly total: number;
  readonly move: Move | null;
  readonly from: Node | null;
}

/** Seconds a mounting costs that is taken in spite of an obstacle: more than any plan. */
export const FORCED = 1e6;

/**
 * Cheapest order, sides, stations and tools by A*: a state is the steps done and the position the part is in; what is
 * left is bounded by its strokes, each shared among the steps it can do at once, and by the flips it cannot do without.
 * Ties go to the state that is further on, then to the lower operation, so the same part gives the same plan.
 * @param force also take mountings with an obstacle, at a price no plan reaches: finds the fewest
 * @param most states looked at before it gives up; the bound then stands without a plan
 */
export function search(problem: Problem, most: number, force: 'force' | 'keep' = 'keep'): Found {
  const { work } = problem;
  const bound = boundOf(problem);
  const best = new Map<string, number>();
  const open = new Heap<Node>(before);
  const start: Node = {
    done: NONE,
    at: null,
    cost: 0,
    total: bound(NONE, null),
    move: null,
    from: null,
  };
  open.push(start);
  let expanded = 0;
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    if (sameMask(node.done, work.all))
      return { moves: pathTo(node), bound: node.cost, cost: node.cost, expanded };
    const key = stateKey(node);
    if ((best.get(key) ?? Infinity) < node.cost) continue;
    if (expanded >= most) return { moves: null, bound: node.total, cost: Infinity, expanded };
    expanded += 1;
    for (const next of successors(problem, node, force)) {
      const nextKey = stateKey(next);
      if ((best.get(nextKey) ?? Infinity) <= next.cost) continue;
      best.set(nextKey, next.cost);
      open.push({ ...next, total: next.cost + bound(next.done, next.at) });
    }
  }
  return { moves: null, bound: Infinity, cost: Infinity, expanded };
}

/**
 * A plan by keeping the most promising states after every operation: for parts too large to search through.
 * @param width states kept
 */
export function beam(problem: Problem, width: number, force: 'force' | 'keep' = 'keep'): Found {
  const bound = boundOf(problem);
  let layer: readonly Node[] = [{ done: NONE, at: null, cost: 0, total: 0, move: null, from: null }];
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

const stateKey = ({ done, at }: Node) => `${keyOf(done)} ${at?.key ?? ''}`;

function before(a: Node, b: Node): boolean {
  if (Math.abs(a.total - b.total) > 1e-9) return a.total < b.total;
  if (Math.abs(a.cost - b.cost) > 1e-9) return a.cost > b.cost;
  return order(a, b) < 0;
}

const order = (a: Node, b: Node) =>
  (a.move?.mounting.operation.index ?? -1) - (b.move?.mounting.operation.index ?? -1) ||
  (a.move?.mounting.held ?? '').localeCompare(b.move?.mounting.held ?? '');

const SIDES: readonly Held[] = ['parent', 'child'];

function* successors(problem: Problem, node: Node, force: 'force' | 'keep'): Generator<Node> {
  for (const operation of openOperations(problem.work, node.done)) {
    for (const station of problem.stations)
      for (const held of SIDES) {
        const next = step(problem, node, station.mount(operation, held, node.done), station, force);
        if (next !== null) yield next;
      }
  }
}

/** The state after a mounting; null where it cannot be taken. */
function step(
  problem: Problem,
  node: Node,
  mounting: Mounting,
  station: Station,
  force: 'force' | 'keep',
): Node | null {
  const { operation, held, obstacle } = mounting;
  const refused = obstacle !== null || problem.refused.has(refusalKey(operation, held, node.done));
  if (refused && force === 'keep') return null;
  const at = placed(problem, node, mounting, station, refused);
  if (at === null) return null;
  const { costs, scale } = problem;
  const move = moveCost(node.at, at, costs, station.rack, scale);
  const stroke =
    strokeCost(operation, station, costs) +
    (mounting.hooked ? costs.hook : 0) +
    (mounting.swings ? costs.swing : 0);
  const cost = node.cost + move + stroke + (refused ? FORCED : 0);
  const done = union(node.done, operation.mask);
  return { done, at, cost, total: cost, move: { mounting, position: at, cost, done: node.done }, from: node };
}

/** Names a mounting in a state. */
export const refusalKey = (operation: Operation, held: Held, done: Mask): string =>
  `${operation.index} ${held} ${keyOf(done)}`;

/** Where an operation takes the part; null when no tools of the rack serve. */
function placed(
  problem: Problem,
  { at }: Node,
  mounting: Mounting,
  station: Station,
  refused: boolean,
): Position | null {
  const { heading, setting } = problem;
  const { operation, held } = mounting;
  const byHand = station.name === 'vise' || station.name === 'hand';
  const on = byHand || at?.toolsOn === station.id ? (at?.tools ?? null) : null;
  const tools = refused || byHand ? on : problem.tools(on, mounting, station);
  if (tools === 'none') return null;
  const set = setting(operation, station);
  return position({
    station: station.name,
    tooling: station.id,
    tools,
    toolsOn: byHand ? (at?.toolsOn ?? '') : station.id,
    faceUp: operation.angle > 0 ? 'marked' : 'unmarked',
    heading: heading(operation, held),
    stop: set.stop ?? at?.stop ?? null,
    setBack: set.setBack ?? at?.setBack ?? null,
  });
}

function pathTo(node: Node): readonly Move[] {
  const moves: Move[] = [];
  for (let n: Node | null = node; n?.move != null; n = n.from) moves.push(n.move);
  return moves.toReversed();
}
