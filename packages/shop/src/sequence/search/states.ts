import { both, isEmpty, type Mask, NONE, union } from '../part/mask.js';
import { openOperations } from '../part/operations.js';
import type { OnMachine } from '../stations/gauge.js';
import type { Mounting } from '../stations/station.js';
import type { AtMachines } from './at-machines.js';
import type { PlacingInput, Position } from './handling.js';
import type { PlacingBook } from './placing.js';
import type { Way } from './ways.js';

/** What a search needs to know of a part in a shop. */
export interface BendProblem extends PlacingInput, AtMachines {
  /** By the number of the operation. */
  readonly ways: readonly (readonly Way[])[];
  readonly positions: PlacingBook;
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
export interface FoundMoves {
  readonly moves: readonly Move[] | null;
  /** No plan costs less. */
  readonly bound: number;
  readonly cost: number;
  readonly expanded: number;
}

/** What a whole search found. */
export interface FoundPlan extends FoundMoves {
  /** True where tools are changed: plans that change them before they have to, or by more pieces, were left out. */
  readonly toolsKept: boolean;
}

/** A state of the search: what is done, where the part is, and how it came there. */
export interface Node {
  readonly done: Mask;
  readonly at: Position | null;
  readonly cost: number;
  readonly move: Move | null;
  readonly from: Node | null;
}

/** Before anything is done. */
export const START: Node = { done: NONE, at: null, cost: 0, move: null, from: null };

/** Lower operation first, then by the side held: ties fall the same way every time. */
export const order = (a: Node, b: Node): number =>
  (a.move?.mounting.operation.index ?? -1) - (b.move?.mounting.operation.index ?? -1) ||
  (a.move?.mounting.held ?? '').localeCompare(b.move?.mounting.held ?? '');

/**
 * Ways that can be next, whether or not anything is in the way: of operations that are open; lines that are one on the
 * flat only together, as long as they can be bent in one stroke.
 * @param isNext false for ways known to lead nowhere
 */
export function openWays(
  problem: BendProblem,
  node: Node,
  isNext: (way: Way) => boolean = () => true,
): readonly Way[] {
  const found: Way[] = [];
  let together = NONE;
  for (const operation of openOperations(problem.work, node.done)) {
    // lines that a machine can bend in one stroke are not bent one by one
    if (!isEmpty(both(together, operation.mask))) continue;
    const ways = (problem.ways[operation.index] ?? []).filter(isNext);
    found.push(...ways);
    if (
      operation.steps.length > 1 &&
      ways.some((way) => way.station.rack.length > 0 && stepTo(problem, node, way) !== null)
    )
      together = union(together, operation.mask);
  }
  return found;
}

/** The state after an operation done one way; null where something is in the way, or no tools serve. */
export function stepTo({ positions, gauges }: BendProblem, node: Node, line: OnMachine): Node | null {
  const { operation, station, held } = line;
  const mounting = station.mount(operation, held, node.done);
  if (mounting.obstacle !== null) return null;
  const placing = positions.place(node.at, { mounting, station, gauged: gauges.at(line, node.done) });
  if (placing === null) return null;
  const { at, seconds } = placing;
  const cost = node.cost + seconds;
  const done = union(node.done, operation.mask);
  return { done, at, cost, move: { mounting, position: at, cost, done: node.done }, from: node };
}

/** False when the operation that led here drives the part into itself. */
export function clean({ contact }: BendProblem, { move }: Node): boolean {
  return move === null || contact(move.mounting.operation, move.done) === null;
}

/** The moves that led to a state. */
export function pathTo(node: Node): readonly Move[] {
  const moves: Move[] = [];
  for (let n: Node | null = node; n?.move != null; n = n.from) moves.push(n.move);
  return moves.toReversed();
}
