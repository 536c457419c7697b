import type { BoundInput, ByLying, Handled } from './handled.js';
import { ANY, byLie, type Due, kindsOf, tasksOf, waysFor } from './strokes.js';
import { type Tour, tourBook } from './tours.js';
import type { Bearing } from './turns.js';
import type { Way } from './ways.js';

/** A number for a way to lie: headings are told to a hundredth of a degree. */
const nameOf = ({ faceUp, heading }: Bearing): number => 2 * heading + (faceUp === 'marked' ? 1 : 0);

/** Strokes in the best choice of ways to lie, with the tour through them. */
export function bestTours({ work, ways, costs, scale }: BoundInput, lies: readonly Bearing[]): Handled {
  const numbers = new Map(lies.map((lie, i) => [nameOf(lie), i]));
  const lieOf = (lie: Bearing) => numbers.get(nameOf(lie)) ?? -1;
  const tours = tourBook(lies, costs, scale);
  const vector = (list: readonly Way[]) => byLie(list, lies.length, lieOf, costs.slide);
  const fixed = kindsOf(work.steps.map((s) => vector(waysFor(ways, s.index))));
  /** Each way to lie is looked at once. @param flips times the part is turned over at least */
  const byLying = (tasks: readonly Due[], flips: (from: Bearing | null) => number): ByLying => {
    const known = new Float64Array(lies.length + 1).fill(Number.NaN);
    return (at) => {
      const lie = at === null ? -1 : lieOf(at);
      const before = known[lie + 1] as number;
      if (!Number.isNaN(before)) return before;
      const made = leastOf(tours(lie, flips(lies[lie] ?? null)), tasks);
      known[lie + 1] = made;
      return made;
    };
  };
  return {
    plain: (left) => byLying(fixed(left), () => 0),
    informed: (ahead) => byLying(tasksOf(ahead, vector), (from) => ahead.flips(from?.faceUp ?? null)),
  };
}

/** The best tour with its tasks. */
function leastOf(tours: readonly Tour[], tasks: readonly Due[]): number {
  let floor = 0;
  for (const task of tasks) floor += task(ANY);
  let best = Infinity;
  for (const { lies, seconds } of tours) {
    // they come in order
    if (floor + seconds >= best) break;
    let sum = seconds;
    for (const task of tasks) {
      sum += task(lies);
      if (sum >= best) break;
    }
    if (sum < best) best = sum;
  }
  return best;
}
