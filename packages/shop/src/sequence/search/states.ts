import type { Held } from '../part/line.js';
import { both, isEmpty, type Mask, NONE, union } from '../part/mask.js';
import { type Operation, openOperations, type Work } from '../part/operations.js';
import type { SelfContact } from '../part/self-contact.js';
import type { Mounting, Station } from '../stations/station.js';
import type { Position } from './handling.js';
import type { PlacingBook, PlacingInput } from './placing.js';

/** What a search needs to know of a part in a shop. */
export interface Problem extends PlacingInput {
  readonly work: Work;
  readonly stations: readonly Station[];
  readonly positions: PlacingBook;
  /** What of the part an operation would drive into another, in a state. */
  readonly contact: (operation: Operation, done: Mask) => SelfContact | null;
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
  /** The queue knows what this state cannot do without. */
  readonly raised: boolean;
}

/** Seconds a mounting costs that is taken in spite of an obstacle: more than any plan. */
export const FORCED = 1e6;

/** Before anything is done. */
export const START: Node = { done: NONE, at: null, cost: 0, total: 0, move: null, from: null, raised: false };

/** Lower operation first, then by the side held: ties fall the same way every time. */
export const order = (a: Node, b: Node): number =>
  (a.move?.mounting.operation.index ?? -1) - (b.move?.mounting.operation.index ?? -1) ||
  (a.move?.mounting.held ?? '').localeCompare(b.move?.mounting.held ?? '');

/** Whether mountings with an obstacle are taken too, at a price. */
export type Force = 'force' | 'keep';

const SIDES: readonly Held[] = ['parent', 'child'];

/**
 * States that can follow, by every operation that is open, on every station, from either side; lines that are one on the
 * flat only together, as long as they can be bent in one stroke. Whether the part would
 * run into itself is left to be asked.
 */
export function successors(problem: Problem, node: Node, force: Force): readonly Node[] {
  const found: Node[] = [];
  let together = NONE;
  for (const operation of openOperations(problem.work, node.done)) {
    // lines that can be bent in one stroke are not bent one by one
    if (!isEmpty(both(together, operation.mask))) continue;
    const before = found.length;
    for (const station of problem.stations)
      for (const held of SIDES) {
        const next = stepTo(problem, node, station.mount(operation, held, node.done), station, force);
        if (next !== null) found.push(next);
      }
    if (operation.steps.length > 1 && found.length > before) together = union(together, operation.mask);
  }
  return found;
}

/** The state after a mounting; null where it cannot be taken. */
export function stepTo(
  problem: Problem,
  node: Node,
  mounting: Mounting,
  station: Station,
  force: Force,
): Node | null {
  const { operation, obstacle } = mounting;
  const refused = obstacle !== null || (force === 'force' && problem.contact(operation, node.done) !== null);
  if (refused && force === 'keep') return null;
  const placing = problem.positions.place(node.at, mounting, station, refused);
  if (placing === null) return null;
  const { at, seconds } = placing;
  const cost = node.cost + seconds + (refused ? FORCED : 0);
  const done = union(node.done, operation.mask);
  return {
    done,
    at,
    cost,
    total: cost,
    move: { mounting, position: at, cost, done: node.done },
    from: node,
    raised: false,
  };
}

/** False when the operation that led here drives the part into itself. */
export function clean({ contact }: Problem, { move }: Node): boolean {
  return move === null || contact(move.mounting.operation, move.done) === null;
}

/** The moves that led to a state. */
export function pathTo(node: Node): readonly Move[] {
  const moves: Move[] = [];
  for (let n: Node | null = node; n?.move != null; n = n.from) moves.push(n.move);
  return moves.toReversed();
}
