import { atOnce } from '@tinwright/core/internal';
import { ancestors } from '../part/fold-tree.js';
import { NONE } from '../part/mask.js';
import type { LineStroke, Work } from '../part/operations.js';
import { type BeamInput, beam } from './beam.js';
import { cheapest } from './cheapest.js';
import { dive, dives } from './dive.js';
import { fromEnd } from './from-end.js';
import { guideOf } from './guide.js';
import { reinserted } from './reinserted.js';
import { followed, relaxed } from './relaxed.js';
import type { BendProblem, FoundMoves, FoundPlan } from './states.js';
import { sweepOrders, sweeps } from './sweeps.js';

/** Looked at before a search gives up: a state of a part with many steps takes longer to look at. */
interface Effort {
  /** Ways tried by the exact search, states kept by the wide one, states looked at for any plan. */
  readonly ways: number;
  readonly width: number;
  readonly dives: number;
  /** Steps put elsewhere with geometry. */
  readonly puts: number;
  /** Looks of the exact search before a plan is made cheaper, and further ones before beams. */
  readonly looks: { readonly few: number; readonly more: number };
  /** States looked at for any plan before anything else, where sweeps find none. */
  readonly first: number;
  /** Ways tried without geometry: worth it where it is asked of many bends one behind the other. */
  readonly floor: number;
}

const EXACT_STEPS = 20; // searched through as a rule
const FEW_STEPS = 8; // searched through at once
const FLOOR_WAYS = 20_000; // tried before geometry is asked
const MOST_PUTS = 30_000; // most plans are as good as they become long before
const FIRST_DIVES = 500; // states of a part with few steps
const AHEAD = 10; // bends that may be made before one that a setter would make first
const EVEN = 1e-6; // s
const DEEP = 8; // bends one behind the other from which states take much longer to look at

function effortFor({ steps, tree }: Work): Effort {
  const depth = Math.max(0, ...tree.panels.map((_, i) => ancestors(tree, i).length - 1));
  const share = Math.min(1, EXACT_STEPS / Math.max(1, steps.length));
  return {
    ways: Math.ceil(depth > DEEP ? 25_000 : 300_000 * share ** 4),
    width: Math.ceil((depth > DEEP ? 8 : 60) * share ** 2),
    floor: depth > DEEP && steps.length > EXACT_STEPS ? FLOOR_WAYS : 0,
    first: Math.max(2 * steps.length, Math.ceil(FIRST_DIVES * share ** 2)),
    looks: steps.length > EXACT_STEPS ? { few: 20, more: 280 } : { few: 150, more: 1350 },
    puts: MOST_PUTS,
    dives: Math.ceil(20_000 * (share * (depth > DEEP ? 0.2 : 1)) ** 5),
  };
}

/** How far a search has come. */
export interface SearchProgress {
  /** Seconds of the cheapest plan so far; infinite before there is one. */
  readonly cost: number;
  /** Seconds that no plan goes under, as far as it is known by now. */
  readonly bound: number;
}

/**
 * The cheapest plan: first good ones, by sweeps and beams, then the proof that none is cheaper, or a cheaper one, by
 * the exact search; where there are too many states to look at, the best so far with what it may still fall short.
 * Without a plan, an infinite bound says that there is none. Goes on a little whenever it is asked how far it is.
 */
export function* planSearch(problem: BendProblem): Generator<SearchProgress, FoundPlan> {
  const found = yield* searched(problem);
  return { ...found, toolsKept: found.moves !== null && problem.positions.changed() };
}

/** The search among plans that keep tools on as long as they serve. */
function* searched(problem: BendProblem): Generator<SearchProgress, FoundMoves> {
  const { ways, width, first, dives: most, floor: tried, looks, puts } = effortFor(problem.work);
  const guide = guideOf(problem);
  let least = guide.bound(NONE, null);
  let best = yield* told(sweeps(problem), (cost) => ({ cost, bound: least }));
  const soFar = (bound = least): SearchProgress => ({ cost: best.cost, bound: Math.min(best.cost, bound) });
  if (best.moves === null && (yield* neverGoes(problem, first))) return { ...best, bound: Infinity };
  // what is not seen at once is soon found, or soon seen not to be there
  if (best.moves === null) best = yield* told(dives(problem, first), () => soFar());
  if (best.bound === Infinity) return best;
  if (tried > 0) {
    const floor = yield* floorOf(problem, best, tried);
    if (floor.cost < best.cost) best = floor;
    least = Math.max(least, floor.bound);
  }
  if (least >= best.cost - EVEN) return { ...best, bound: best.cost };
  // the proof asks for all prospects at once: a line at a time they can be waited for
  for (const { station, operation, held } of problem.ways.flat()) {
    station.prospect(operation, held, NONE);
    yield soFar();
  }
  const proof = cheapest(problem, guide, ways, () => best.cost);
  const proving = (bound: number): SearchProgress => {
    // whatever no plan went under once none goes under
    least = Math.max(least, bound);
    return soFar();
  };
  // where one good way leads to the end, the exact search is there before any other
  let exact = yield* some(proof, looks.few, proving);
  least = Math.max(least, guide.bound(NONE, null) + guide.rise(NONE, null));
  if (exact === null && best.moves !== null)
    best = yield* told(reinserted(problem, best.moves, puts), (cost) => ({
      cost,
      bound: Math.min(cost, least),
    }));
  exact ??= yield* some(proof, looks.more, proving);
  const orders = exact === null && problem.work.steps.length > FEW_STEPS ? sweepOrders(problem) : [];
  for (const order of orders) {
    const input: BeamInput = { width, ahead: AHEAD, rank: ranked(problem.work, order), limit: best.cost };
    const wide = yield* told(beam(problem, guide, input), () => soFar());
    if (wide.moves !== null && wide.cost < best.cost) best = wide;
  }
  exact ??= yield* told(proof, proving);
  if (exact.moves !== null || exact.bound === Infinity) return exact;
  const bound = Math.max(least, exact.bound);
  if (best.moves !== null) return { ...best, bound, expanded: exact.expanded };
  const any = yield* told(dives(problem, most), () => soFar(bound));
  return { ...any, bound: Math.max(any.bound, bound) };
}

/** True when it is soon seen from the end that there is no plan. @param most states looked at */
function* neverGoes(problem: BendProblem, most: number): Generator<SearchProgress, boolean> {
  const looks = fromEnd(problem, problem.work.all, most);
  const seen = { cost: Infinity, bound: 0 };
  return (yield* told(looks, () => seen)) === 'none';
}

/** What no plan goes under without geometry, with the plan that takes as little, where it can be followed. */
function* floorOf(
  problem: BendProblem,
  { cost }: FoundMoves,
  most: number,
): Generator<SearchProgress, FoundMoves> {
  const easier = relaxed(problem);
  const found = yield* told(
    cheapest(easier, guideOf(easier), most, () => cost),
    (bound) => ({ cost, bound }),
  );
  const made = found.moves === null ? null : followed(problem, found.moves);
  return {
    ...(made ?? { ...found, moves: null, cost: Infinity }),
    bound: found.bound,
    expanded: found.expanded,
  };
}

/** What the search has come to, by what a part of it tells on the way. */
type Seen<Told> = (told: Told) => SearchProgress;

/** So many looks of a part of the search; null when it has not come to an end by then. */
function* some<T>(
  part: Generator<number, T>,
  looks: number,
  seen: Seen<number>,
): Generator<SearchProgress, T | null> {
  for (let i = 0; i < looks; i++) {
    const { done, value } = part.next();
    if (done === true) return value;
    yield seen(value);
  }
  return null;
}

/** What a part of the search finds. */
function* told<T, Told>(part: Generator<Told, T>, seen: Seen<Told>): Generator<SearchProgress, T> {
  for (;;) {
    const { done, value } = part.next();
    if (done === true) return value;
    yield seen(value);
  }
}

function ranked(
  { operations }: Work,
  order: (a: LineStroke, b: LineStroke) => number,
): (operation: LineStroke) => number {
  const ranks = new Map(operations.toSorted(order).map((o, i) => [o.index, i]));
  return ({ index }) => ranks.get(index) ?? 0;
}

/** Some plan, or none, sooner than the cheapest is found. @param dives states looked at in all */
export function anyPlan(problem: BendProblem, dives: number = effortFor(problem.work).dives): FoundMoves {
  const quick = atOnce(sweeps(problem));
  return quick.moves === null ? dive(problem, dives) : quick;
}
