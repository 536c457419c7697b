import { lazy } from '@tinwright/core/internal';
import {
  both,
  has,
  isEmpty,
  keptBy,
  type Mask,
  maskOf,
  NONE,
  stepsOf,
  union,
  without,
} from '../part/mask.js';
import type { BendStage, Work } from '../part/operations.js';
import { Before } from './before.js';
import type { BendProblem } from './states.js';
import type { Way } from './ways.js';

/** What the steps left in a state are bound to, whatever order they are done in. */
export interface Ahead {
  /** Ways by which a step can still be done, by step; null for steps that are done or stay flat. */
  readonly open: readonly (readonly Chance[] | null)[];
  /** Steps that make each other dearer. */
  readonly rivals: readonly Rivals[];
  /** Steps that come before one. */
  readonly before: (step: number) => Mask;
  /** Least times the part is turned over from one side up, or from none. */
  readonly flips: (faceUp: Way['faceUp'] | null) => number;
}

/** A way to do a step, and the steps that are never done before it goes. */
export interface Chance {
  readonly way: Way;
  readonly lost: Mask;
}

/** Two steps, each of which makes the other dearer when it is done first; no stroke does both at once. */
export interface Rivals {
  readonly steps: readonly [number, number];
  /** Ways of the first that are left when the second was done before. */
  readonly after: (open: Ahead['open'], step: number, other: number) => readonly Way[];
}

/**
 * What follows from a state by precedence alone. A way is lost for good once some single step more is done that puts
 * metal where a tool has to be; so a step with one way left comes before all that would take it, which takes ways from those
 * in turn, until nothing changes (arc consistency on precedences: Mackworth 1977). Null where a step has no way left.
 */
export function precedenceOf(problem: BendProblem): (done: Mask) => Ahead | null {
  const { work } = problem;
  const known = lazy(() => {
    const chances = work.steps.map((s) => chancesOf(problem, s.index));
    return { chances, rivals: rivalsOf(work, chances) };
  });
  return keptBy(work.all, (done) => propagated(problem, known(), done));
}

function rivalsOf({ operations }: Work, chances: readonly (readonly Chance[])[]): readonly Rivals[] {
  const atOnce = (a: number, b: number) => operations.some((o) => has(o.mask, a) && has(o.mask, b));
  const after: Rivals['after'] = (open, step, other) =>
    (open[step] ?? []).filter((c) => !has(c.lost, other)).map((c) => c.way);
  const least = (ways: readonly Way[]) => Math.min(...ways.map((w) => w.seconds / w.operation.steps.length));
  const leasts = chances.map((own) => least(own.map((c) => c.way)));
  const dearer = (a: number, b: number) => least(after(chances, a, b)) > (leasts[a] as number);
  return chances.flatMap((_, a) =>
    chances.flatMap((__, b): readonly Rivals[] =>
      a < b && dearer(a, b) && dearer(b, a) && !atOnce(a, b) ? [{ steps: [a, b], after }] : [],
    ),
  );
}

function chancesOf(problem: BendProblem, step: number): readonly Chance[] {
  const { work, ways } = problem;
  return work.operations
    .filter((o) => o.steps.includes(step))
    .flatMap((o) =>
      (ways[o.index] ?? []).map((way): Chance => {
        const lost = work.steps.filter(
          ({ index }) =>
            has(work.all, index) &&
            !o.steps.includes(index) &&
            way.station.prospect(o, way.held, maskOf([index])) === null,
        );
        return { way, lost: union(maskOf(lost.map((l) => l.index)), o.before) };
      }),
    );
}

const MOST_SHARP = 20; // steps

/** A chance with what it is lost by once these steps are done: more than before, or the chance itself. */
function chanceAfter(chance: Chance, done: Mask, left: readonly number[]): readonly Chance[] {
  const { way, lost: known } = chance;
  const { operation, station, held } = way;
  const goes = (more: Mask) => station.prospect(operation, held, union(done, more)) !== null;
  if (!goes(NONE)) return [];
  let lost = known;
  for (const s of left) {
    const step = maskOf([s]);
    if (isEmpty(both(union(lost, operation.mask), step)) && !goes(step)) lost = union(lost, step);
  }
  return [lost === known ? chance : { way, lost }];
}

function propagated(
  { work }: BendProblem,
  { chances, rivals }: { readonly chances: readonly (readonly Chance[])[]; readonly rivals: Ahead['rivals'] },
  done: Mask,
): Ahead | null {
  const todo = without(work.all, done);
  const left = stepsOf(todo);
  const before = new Before(work.steps.length, done);
  for (const s of left) {
    const { panel, action } = work.steps[s] as BendStage;
    const first = work.first[panel] as number;
    if (action === 'close' && !has(done, first)) before.put(first, s);
  }
  // with many steps there are too many states to ask
  const sharp = work.steps.length <= MOST_SHARP;
  const open = chances.map((list, s) =>
    has(todo, s) ? (sharp ? list.flatMap((chance) => chanceAfter(chance, done, left)) : list) : null,
  );
  for (let [changed, turn] = [true, 0]; changed; turn++) {
    changed = false;
    // chains are followed in either direction
    for (const s of turn % 2 === 0 ? left : left.toReversed()) {
      const own = (open[s] as readonly Chance[]).filter((c) => isEmpty(both(c.lost, before.of(s))));
      open[s] = own;
      const news = own.length === 0 ? null : ordered(s, own, left, before);
      if (news === null) return null;
      changed ||= news;
    }
  }
  return {
    open,
    rivals,
    before: (s) => before.of(s),
    flips: (faceUp) => leastFlips(work, left, before, faceUp),
  };
}

/** Put a step before what every one of its ways would be lost by, and before what comes after; null where that goes round. */
function ordered(
  step: number,
  own: readonly Chance[],
  left: readonly number[],
  before: Before,
): boolean | null {
  const needs = own.map((c) => c.lost).reduce(both);
  let news = false;
  for (const later of left) {
    if (later === step || !(has(needs, later) || before.is(step, later))) continue;
    if (before.is(later, step)) return null;
    if (before.put(step, later)) news = true;
  }
  return news;
}

/** Turns over along the chain of steps bound to each other that has the most. */
function leastFlips(
  { steps, tree }: Work,
  left: readonly number[],
  before: Before,
  faceUp: Way['faceUp'] | null,
): number {
  const faces = steps.map((s): Way['faceUp'] =>
    (tree.panels[s.panel]?.bend?.angle ?? 0) > 0 ? 'marked' : 'unmarked',
  );
  const counts = new Map(left.map((s) => [s, before.count(s)]));
  const most = new Map<number, number>();
  let best = 0;
  for (const s of left.toSorted((a, b) => (counts.get(a) as number) - (counts.get(b) as number))) {
    let own = faceUp === null || faceUp === faces[s] ? 0 : 1;
    for (const [other, flips] of most)
      if (before.is(other, s)) own = Math.max(own, flips + (faces[other] === faces[s] ? 0 : 1));
    most.set(s, own);
    best = Math.max(best, own);
  }
  return best;
}
