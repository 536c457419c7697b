import { axesOf } from './axes.js';
import type { BoundInput, ByLying, Handled } from './handled.js';
import { byLie, tasksOf, waysFor } from './strokes.js';
import type { Way } from './ways.js';

/** A step on its axis: seconds with either end of it to the operator. */
interface StepOnAxis {
  readonly axis: number;
  readonly seconds: readonly [number, number];
}

/**
 * Strokes of a part that lies in many ways: on every axis the better of doing all with one end to the operator, or of
 * turning it for the rest; and a turn for every heading that is come to. Axes do not share a heading, so they add up.
 */
export function byAxes({ work, ways, costs, scale }: BoundInput): Handled {
  const unit = scale * Math.min(costs.turn90, costs.turn180, 2 * costs.turn90);
  const axes = axesOf(
    ways.flat().map((w) => w.heading),
    costs,
  );
  const whole = (list: readonly Way[]) => byLie(list, 1, () => 0, costs.slide);
  const onAxis = (list: readonly Way[]): StepOnAxis | null => {
    const own = new Set(list.map((w) => axes.get(w.heading)?.axis));
    const [axis] = own;
    if (axis === undefined || own.size > 1) return null;
    const [near, far] = byLie(list, 2, (w) => axes.get(w.heading)?.end ?? 0, costs.slide) as [number, number];
    return { axis, seconds: [near, far] };
  };
  const listOf = work.steps.map((s) => waysFor(ways, s.index));
  const fixed = listOf.map(onAxis);
  const anyhow = listOf.map((list) => whole(list)[0] as number).map((s) => (s === Infinity ? 0 : s));

  const byLying = (steps: readonly (StepOnAxis | null)[], rest: number): ByLying => {
    const sums = new Float64Array(3 * axes.size);
    const used = new Set<number>();
    for (const step of steps) {
      if (step === null) continue;
      const { axis, seconds } = step;
      used.add(axis);
      const [near, far] = seconds;
      for (const [i, s] of [near, far, Math.min(near, far)].entries())
        sums[3 * axis + i] = (sums[3 * axis + i] as number) + s;
    }
    /** Least seconds on an axis. @param free the end that lies to the operator already, or -1 */
    const least = (axis: number, free: number): number =>
      Math.min(
        (sums[3 * axis] as number) + (free === 0 ? 0 : unit),
        (sums[3 * axis + 1] as number) + (free === 1 ? 0 : unit),
        (sums[3 * axis + 2] as number) + (free < 0 ? 2 : 1) * unit,
      );
    let all = rest;
    for (const axis of used) all += least(axis, -1);
    return (at) => {
      // the first heading costs nothing
      if (at === null) return all - (used.size > 0 ? unit : 0);
      const here = axes.get(at.heading);
      if (here === undefined || !used.has(here.axis)) return all;
      return all - least(here.axis, -1) + least(here.axis, here.end);
    };
  };
  const restOf = (left: readonly number[]) =>
    left.reduce((sum, s) => sum + (fixed[s] === null ? (anyhow[s] as number) : 0), 0);
  const turns = (steps: readonly (StepOnAxis | null)[], at: Parameters<ByLying>[0]): number => {
    const used = new Set(steps.flatMap((s) => (s === null ? [] : [s.axis])));
    const here = at === null ? used.size > 0 : used.has(axes.get(at.heading)?.axis ?? -1);
    return unit * (used.size - (here ? 1 : 0));
  };
  return {
    plain: (left) =>
      byLying(
        left.map((s) => fixed[s] as StepOnAxis | null),
        restOf(left),
      ),
    informed: (ahead) => {
      const steps = ahead.open.map((list) => (list === null ? null : onAxis(list.map((c) => c.way))));
      const loose = ahead.open.flatMap((list, s) =>
        list !== null && list.length > 0 && steps[s] === null
          ? [whole(list.map((c) => c.way))[0] as number]
          : [],
      );
      const apart = byLying(
        steps,
        loose.reduce((a, b) => a + b, 0),
      );
      // rivals are paired whichever way the part lies
      const paired = tasksOf(ahead, whole).reduce((sum, task) => sum + task(1), 0);
      return (at) => Math.max(apart(at), paired + turns(steps, at));
    },
  };
}
