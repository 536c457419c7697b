import { type Mask, stepsOf, without } from '../part/mask.js';
import type { Work } from '../part/operations.js';
import { changesOf, type Lies } from './changes.js';
import type { PlacingInput } from './handling.js';
import type { Ahead } from './precedence.js';
import { ANY, byLie, type Due, kindsOf, tasksOf } from './strokes.js';
import { type Bearing, type Tour, tourBook } from './tours.js';
import type { Way } from './ways.js';

/** What a bound is computed from. */
export interface BoundInput extends PlacingInput {
  readonly work: Work;
  readonly ways: readonly (readonly Way[])[];
}

/** Least seconds still to come from a state; more of them with what is known to lie ahead of it. */
export type Bound = (done: Mask, at: Lies | null, ahead?: Ahead | null) => number;

const MOST_LIES = 8; // ways to lie of which every choice is weighed

/**
 * Least seconds still to come from a state, geometry left out: every stroke with the way to it, shared among the steps
 * it can do at once, in the best choice of ways to lie with the shortest tour through them, and a change for every further
 * stop and set-back that the steps left cannot do without. Never more than the true rest (Hart, Nilsson, Raphael 1968),
 * so a search by it finds the cheapest plan. Where a part can lie in too many ways, sides up and axes are counted instead.
 */
export function boundOf(input: BoundInput): Bound {
  const { work, costs } = input;
  const lies = liesOf(input.ways.flat());
  const counted = lies.length > MOST_LIES;
  const changes = changesOf(
    { ...input, steps: work.steps.length },
    counted ? ['face', 'axis', 'stop', 'setBack'] : ['stop', 'setBack'],
  );
  const handled = counted ? anyhow(input) : bestTours(input, lies);
  return (done, at, ahead = null) => {
    const left = stepsOf(without(work.all, done));
    if (left.length === 0) return 0;
    // the first operation is not slid to
    return handled(left, at, ahead) + changes(left, at, ahead) - (at === null ? costs.slide : 0);
  };
}

/** Seconds of strokes, and of what is handled between them. */
type Handled = (left: readonly number[], at: Lies | null, ahead: Ahead | null) => number;

/** A number for a way to lie: headings are told to a hundredth of a degree. */
const nameOf = ({ faceUp, heading }: Bearing): number => 2 * heading + (faceUp === 'marked' ? 1 : 0);

/** The ways to lie that a part is bent in. */
function liesOf(ways: readonly Way[]): readonly Bearing[] {
  const lies = new Map(ways.map(({ faceUp, heading }) => [nameOf({ faceUp, heading }), { faceUp, heading }]));
  return [...lies].toSorted((a, b) => a[0] - b[0]).map(([, lie]) => lie);
}

const ONE = 1; // the only way to lie, by bits

/** Strokes whichever way the part lies. */
function anyhow({ work, ways, costs }: BoundInput): Handled {
  const vector = (list: readonly Way[]) => byLie(list, 1, () => 0, costs.slide);
  const fixed = kindsOf(work.steps.map((s) => vector(waysFor(ways, s.index))));
  return (left, _, ahead) => {
    const tasks = ahead === null ? fixed(left) : tasksOf(ahead, vector);
    return tasks.reduce((sum, task) => sum + task(ONE), 0);
  };
}

/** Strokes in the best choice of ways to lie, with the tour through them. */
function bestTours({ work, ways, costs, scale }: BoundInput, lies: readonly Bearing[]): Handled {
  const numbers = new Map(lies.map((lie, i) => [nameOf(lie), i]));
  const lieOf = (lie: Bearing) => numbers.get(nameOf(lie)) ?? -1;
  const tours = tourBook(lies, costs, scale);
  const vector = (list: readonly Way[]) => byLie(list, lies.length, lieOf, costs.slide);
  const fixed = kindsOf(work.steps.map((s) => vector(waysFor(ways, s.index))));
  return (left, at, ahead) => {
    const tasks = ahead === null ? fixed(left) : tasksOf(ahead, vector);
    const flips = ahead === null ? 0 : ahead.flips(at?.faceUp ?? null);
    return leastOf(tours(at === null ? -1 : lieOf(at)), tasks, scale * costs.flip * flips);
  };
}

const waysFor = (ways: BoundInput['ways'], step: number) =>
  ways.flat().filter((w) => w.operation.steps.includes(step));

/** The best tour with its tasks. @param flipping seconds of turning over that are needed whichever it is */
function leastOf(tours: readonly Tour[], tasks: readonly Due[], flipping: number): number {
  let floor = 0;
  for (const task of tasks) floor += task(ANY);
  let best = Infinity;
  for (const { lies, seconds, turning } of tours) {
    // they come in order
    if (floor + seconds >= best) break;
    let sum = Math.max(seconds, turning + flipping);
    for (const task of tasks) {
      sum += task(lies);
      if (sum >= best) break;
    }
    if (sum < best) best = sum;
  }
  return best;
}
