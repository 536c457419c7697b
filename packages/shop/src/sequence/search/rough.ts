import { type Mask, NONE, union } from '../part/mask.js';
import { isNext, type LineStroke } from '../part/operations.js';
import { gaugedNext } from './gauging.js';
import { changeCost, type Lie, type Position } from './handling.js';
import type { BendProblem, Node } from './states.js';
import type { Way } from './ways.js';

/** Where a plan has come to, as far as it is told without geometry. */
export interface Rough {
  readonly done: Mask;
  /** The last way; null before there is one. */
  readonly way: Way | null;
  /** Bits of what a stop may be set to. */
  readonly on: bigint;
  /** Seconds up to here. */
  readonly cost: number;
}

/** Before anything is done. */
export const ROUGH_START: Rough = { done: NONE, way: null, on: 0n, cost: 0 };

/** Goes on by an operation, one way or the one that takes least; null where it is not its turn. */
export type RoughStep = (from: Rough, operation: LineStroke, only: Way | null) => Rough | null;

/** Where a state is that was come to by a way. */
export const roughOf = ({ done, at, cost }: Node, way: Way): Rough => ({
  done,
  way,
  on: at?.gauge ?? 0n,
  cost,
});

/** Steps of a part without geometry, without tools, and without what it takes to bring the part in and off. */
export function roughSteps({ work, ways, costs, scale }: BendProblem): RoughStep {
  const all = ways.flat();
  // a row for each way that a step is left by: a rack of many tools makes more pairs than there is room for
  const known: Float64Array[] = [];
  const away = (from: Way, to: Way): number => {
    const row = known[from.index] ?? new Float64Array(all.length).fill(Number.NaN);
    known[from.index] = row;
    const before = row[to.index] as number;
    if (!Number.isNaN(before)) return before;
    const made = costs.slide + changeCost(lying(from), lieOf(to), costs, scale);
    row[to.index] = made;
    return made;
  };
  const by = (from: Rough, way: Way): Rough => {
    const { on, seconds } = gaugedNext(way, from.done, from.on, costs);
    const cost = from.cost + way.seconds + (from.way === null ? 0 : away(from.way, way)) + seconds;
    return { done: union(from.done, way.operation.mask), way, on, cost };
  };
  return (from, operation, only) => {
    if (!isNext(work, operation, from.done)) return null;
    const own = only === null ? (ways[operation.index] ?? []) : [only];
    return own
      .map((way) => by(from, way))
      .reduce<Rough | null>((a, b) => (a === null || b.cost < a.cost ? b : a), null);
  };
}

const lieOf = ({ station, faceUp, heading, stop, setBack }: Way): Lie => ({
  station: station.name,
  tooling: station.id,
  faceUp,
  heading,
  stop,
  setBack,
});

/** Tools, and what a stop is set to, are told apart from it. */
const lying = (way: Way): Position => ({ ...lieOf(way), tools: null, toolsOn: '', gauge: 0n, id: -1 });
