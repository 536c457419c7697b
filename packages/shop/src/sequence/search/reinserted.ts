import { type Mask, union, without } from '../part/mask.js';
import { isNext } from '../part/operations.js';
import { cheapestStep } from './backwards.js';
import { ROUGH_START, type Rough, type RoughStep, roughOf, roughSteps } from './rough.js';
import { type PlanStep, type Shift, shiftsFrom } from './shifts.js';
import {
  type BendProblem,
  clean,
  type FoundMoves,
  type Move,
  type Node,
  pathTo,
  START,
  stepTo,
} from './states.js';
import type { Way } from './ways.js';

const EVEN = 1e-6; // s
const AFTER = 8; // steps behind the last that is moved by which it has to be cheaper

/**
 * A plan made cheaper: steps and runs of them are taken out of it and put back where they take less, as long as that goes
 * on (Or 1976). What a place promises is told without geometry, which is asked only where it would save something: first
 * with what every step takes beyond that taken to stay as it is, then without.
 * @param most steps tried with geometry
 */
export function* reinserted(
  problem: BendProblem,
  moves: readonly Move[],
  most: number,
): Generator<number, FoundMoves> {
  const step = roughSteps(problem);
  let plan = planOf(problem, step, moves);
  const end = (): Node => plan.at(-1)?.node ?? START;
  let tried = 0;
  for (const strict of [true, false])
    for (let [i, since] = [0, 0]; since < plan.length && tried < most; i = (i + 1) % plan.length, since++) {
      const input = { plan, step, ways: problem.ways, strict };
      for (const shift of shiftsFrom(input, i)) {
        yield end().cost;
        const made: Made = shifted(problem, plan, shift);
        tried += made.tried;
        if (made.end === null) continue;
        plan = planOf(problem, step, pathTo(made.end));
        since = -1;
        break;
      }
      yield end().cost;
    }
  return { moves: pathTo(end()), bound: 0, cost: end().cost, expanded: tried };
}

/** A plan step by step. */
function planOf({ ways }: BendProblem, step: RoughStep, moves: readonly Move[]): readonly PlanStep[] {
  const plan: PlanStep[] = [];
  for (const move of moves) {
    const { operation, held } = move.mounting;
    const { tooling } = move.position;
    const way = ways[operation.index]?.find((w) => w.held === held && w.station.id === tooling) as Way;
    const last = plan.at(-1);
    const rough = step(last === undefined ? ROUGH_START : roughOf(last.node, last.way), operation, way);
    const done = union(move.done, operation.mask);
    const node = { done, at: move.position, cost: move.cost, move, from: last?.node ?? START };
    plan.push({ way, node, extra: Math.max(0, move.cost - (rough?.cost ?? move.cost)) });
  }
  return plan;
}

/** The end of a plan after a shift, null where it is no cheaper, and how many steps were tried for it. */
interface Made {
  readonly end: Node | null;
  readonly tried: number;
}

function shifted(problem: BendProblem, plan: readonly PlanStep[], shift: Shift): Made {
  const { order, first, last, run, path, saves, by } = shift;
  // what is moved itself is what mostly does not go
  const stuck = stuckAfter(problem, shift);
  if (stuck !== null) return { end: null, tried: stuck };
  let node: Node = plan[first - 1]?.node ?? START;
  let tried = run[1] - run[0];
  for (let k = first; k < order.length; k++) {
    tried += 1;
    const { way } = order[k] as PlanStep;
    const told = path[k - first];
    const next = stepped(problem, node, {
      way: told?.way ?? way,
      most: told?.cost ?? -Infinity,
      fixed: k === run[0] && by !== null,
    });
    if (next === null) return { end: null, tried };
    node = next;
    const old = (plan[k] as PlanStep).node;
    const saved = old.cost - node.cost;
    const lost = told !== undefined && node.cost - told.cost > saves - EVEN;
    const asBefore = k >= last && (node.at === old.at || k >= last + AFTER);
    if (lost || (asBefore && saved < EVEN)) return { end: null, tried };
  }
  return { end: node.cost < (plan.at(-1) as PlanStep).node.cost - EVEN ? node : null, tried };
}

/** Steps of the run that were tried until one did not go where it is put; null where all may. */
function stuckAfter({ ways }: BendProblem, { order, first, run, path, by }: Shift): number | null {
  const stuck = order.slice(...run).findIndex(({ way: { operation } }, i) => {
    const done = without((path[run[0] + i - first] as Rough).done, operation.mask);
    return !(by === null ? (ways[operation.index] ?? []) : [by]).some((w) => goes(w, done));
  });
  return stuck < 0 ? null : stuck + 1;
}

const goes = ({ station, operation, held }: Way, done: Mask): boolean =>
  station.mount(operation, held, done).obstacle === null;

interface Wanted {
  readonly way: Way;
  /** Seconds up to there beyond which another way is looked for. */
  readonly most: number;
  /** No other one is. */
  readonly fixed: boolean;
}

/** A step by the way that promised the most, or by another one that takes less. */
function stepped(problem: BendProblem, node: Node, { way, most, fixed }: Wanted): Node | null {
  if (!isNext(problem.work, way.operation, node.done)) return null;
  const made = stepTo(problem, node, way);
  const own = made === null || !clean(problem, made) ? null : made;
  if (fixed || (own !== null && own.cost <= most + EVEN)) return own;
  const other = cheapestStep(problem, node, way.operation);
  return own === null || (other !== null && other.cost < own.cost) ? other : own;
}
