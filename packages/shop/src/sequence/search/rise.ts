import { both, isEmpty, type Mask, maskOf, stepsOf, without } from '../part/mask.js';
import type { LineStroke } from '../part/operations.js';
import type { Station } from '../stations/station.js';
import type { Bound } from './bound.js';
import { leastTools, type Position } from './handling.js';
import { narrowingOf } from './narrowing.js';
import type { Ahead } from './precedence.js';
import type { BendProblem } from './states.js';
import { setAtFirst } from './tool-book.js';

/**
 * Seconds that a state cannot do without on top of its bound, whatever order the rest is done in: the walking and tool
 * changing that any one step left needs, and what follows from steps that have to come before each other; infinite
 * where a step can no longer be done at all.
 */
export function riseOf(
  problem: BendProblem,
  bound: Bound,
  precedence: (done: Mask) => Ahead | null,
): (done: Mask, at: Position | null) => number {
  const { work, costs } = problem;
  const steps = work.steps.map((s) => ({
    own: maskOf([s.index]),
    operations: work.operations.filter((o) => o.steps.includes(s.index)),
  }));
  const narrowing = narrowingOf(costs);
  const mounts = problem.stations.some((s) => s.rack.length > 0);
  /** From a position to a station, for an operation with such a prospect. */
  const toStation = (at: Position | null, station: Station): number =>
    at === null || at.station === station.name ? 0 : costs.walk;
  /** For an operation after the steps of a state. */
  const least = (o: LineStroke, done: Mask, at: Position | null): number => {
    if (!isEmpty(both(o.before, done))) return Infinity;
    let found = Infinity;
    for (const { station, held } of problem.ways[o.index] ?? []) {
      const prospect = station.prospect(o, held, done);
      if (prospect === null) continue;
      const on = at?.toolsOn === station.id ? at.tools : setAtFirst(station);
      const change =
        station.rack.length === 0
          ? 0
          : narrowing(on, station.rack, prospect) + leastTools(at, station, costs);
      found = Math.min(found, toStation(at, station) + change);
      if (found === 0) return 0;
    }
    return found;
  };
  /** The same for a step after others, the rest of its stroke left out; the more of them, the more. */
  const after = (step: number, done: Mask, at: Position | null, joint: boolean): number => {
    let found = Infinity;
    for (const o of steps[step]?.operations ?? []) {
      if (!joint && o.steps.length > 1 && !isEmpty(both(o.mask, done))) continue;
      found = Math.min(found, least(o, joint ? without(done, o.mask) : done, at));
      if (found === 0) return 0;
    }
    return found;
  };
  /**
   * The most that any step takes in the order in which that is least: the step that takes least after all others comes
   * last, and so on backwards (Lawler 1973).
   */
  const inAnyOrder = (left: readonly number[], at: Position | null): number => {
    // what is folded last of a chain mostly comes last
    let [rest, before, most] = [left.toReversed(), work.all, 0];
    while (rest.length > 1) {
      let [last, found] = [-1, Infinity];
      for (const s of rest) {
        if (found <= most) break;
        const own = after(s, without(before, (steps[s] as (typeof steps)[number]).own), at, true);
        if (own < found) [last, found] = [s, own];
      }
      if (last < 0) return Infinity;
      most = Math.max(most, found);
      rest = rest.filter((s) => s !== last);
      before = without(before, (steps[last] as (typeof steps)[number]).own);
    }
    return most;
  };
  return (done, at) => {
    const left = stepsOf(without(work.all, done));
    let most = 0;
    for (const step of left) {
      most = Math.max(most, after(step, done, at, false));
      if (most === Infinity) return Infinity;
    }
    const ahead = precedence(done);
    if (ahead === null) return Infinity;
    const lastly = mounts ? inAnyOrder(left, at) : 0;
    return Math.max(most, lastly) + Math.max(0, bound(done, at, ahead) - bound(done, at));
  };
}
