import type { Costs } from '../machines/shop.js';
import { moveCost, type Position, position, type Setting, strokeCost, type ToolBook } from './handling.js';
import type { Held } from './line.js';
import { keyOf, type Mask, NONE, union } from './mask.js';
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

/** A state of the search: what is done, where the part is, and how it came there. */
export interface Node {
  readonly done: Mask;
  readonly at: Position | null;
  readonly cost: number;
  readonly total: number;
  readonly move: Move | null;
  readonly from: Node | null;
}

/** Seconds a mounting costs that is taken in spite of an obstacle: more than any plan. */
export const FORCED = 1e6;

/** Before anything is done. */
export const START: Node = { done: NONE, at: null, cost: 0, total: 0, move: null, from: null };

/** Names a state. */
export const stateKey = ({ done, at }: Node): string => `${keyOf(done)} ${at?.key ?? ''}`;

/** Lower operation first, then by the side held: ties fall the same way every time. */
export const order = (a: Node, b: Node): number =>
  (a.move?.mounting.operation.index ?? -1) - (b.move?.mounting.operation.index ?? -1) ||
  (a.move?.mounting.held ?? '').localeCompare(b.move?.mounting.held ?? '');

/** States that can follow, by every operation that is open, on every station, from either side. */
/** Whether mountings with an obstacle are taken too, at a price. */
export type Force = 'force' | 'keep';

const SIDES: readonly Held[] = ['parent', 'child'];

export function* successors(problem: Problem, node: Node, force: Force): Generator<Node> {
  for (const operation of openOperations(problem.work, node.done)) {
    for (const station of problem.stations)
      for (const held of SIDES) {
        const next = step(problem, node, station.mount(operation, held, node.done), station, force);
        if (next !== null) yield next;
      }
  }
}

/** The state after a mounting; null where it cannot be taken. */
function step(problem: Problem, node: Node, mounting: Mounting, station: Station, force: Force): Node | null {
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

/** The moves that led to a state. */
export function pathTo(node: Node): readonly Move[] {
  const moves: Move[] = [];
  for (let n: Node | null = node; n?.move != null; n = n.from) moves.push(n.move);
  return moves.toReversed();
}
