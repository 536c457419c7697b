import { axesOf, type OnAxis } from './axes.js';
import type { BoundInput, ByLying, Handled } from './handled.js';
import { byLie, tasksOf, waysFor } from './strokes.js';
import type { Bearing } from './turns.js';
import type { Way } from './ways.js';

/** A step on its axis: seconds with either end of it to the operator. */
interface StepOnAxis {
  readonly axis: number;
  readonly seconds: readonly [number, number];
}

type Steps = readonly (StepOnAxis | null)[];

/** Least times a part is turned over from how it lies. */
type Flips = (from: Bearing | null) => number;

/**
 * Strokes of a part that lies in many ways: on every axis the better of doing all with one end to the operator, or of
 * bringing the other one there for the rest; a turn for every axis that is come to, and turning over for what is needed. Axes do
 * not share a heading, so they add up; but every time the part is turned over it may bring the other end, at no cost of its own.
 */
export function byAxes({ work, ways, costs, scale }: BoundInput): Handled {
  const turn = scale * Math.min(costs.turn90, costs.turn180);
  const flip = scale * costs.flip;
  const axes = axesOf(ways.flat().map((w) => w.heading));
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
  const faces = listOf.map((list) => list[0]?.faceUp ?? null);
  const hereOf = (at: Bearing | null): OnAxis | null => (at === null ? null : (axes.get(at.heading) ?? null));
  /** Turns to come to the axes that are used; the first heading costs nothing. */
  const coming = (used: ReadonlySet<number>, at: Bearing | null): number => {
    const free = at === null ? used.size > 0 : used.has(hereOf(at)?.axis ?? -1);
    return turn * (used.size - (free ? 1 : 0));
  };

  const byLying = (steps: Steps, rest: number, flips: Flips): ByLying => {
    const { sums, used } = summed(steps, axes.size);
    return (at) => {
      const here = hereOf(at);
      const over = flips(at);
      let all = rest + flip * over + coming(used, at);
      /** Of the axes on which the other end is wanted, what that costs or what is lost without. */
      const ends: number[] = [];
      for (const axis of used) {
        const [near, far, either] = sums.subarray(3 * axis, 3 * axis + 3) as unknown as [
          number,
          number,
          number,
        ];
        const alone = here?.axis !== axis ? Math.min(near, far) : here.end === 0 ? near : far;
        all += either;
        ends.push(Math.min(alone - either, turn, flip));
      }
      // the dearest are had by turning over
      const paid = ends.toSorted((a, b) => a - b).slice(0, Math.max(0, ends.length - over));
      return paid.reduce((sum, s) => sum + s, all);
    };
  };
  const restOf = (left: readonly number[]) =>
    left.reduce((sum, s) => sum + (fixed[s] === null ? (anyhow[s] as number) : 0), 0);
  /** The sides that have to be up for some steps. */
  const flipsFor = (left: readonly number[]): Flips => {
    const sides = new Set(left.map((s) => faces[s] ?? null).filter((f) => f !== null));
    return (at) => Math.max(0, sides.size - (at === null || sides.has(at.faceUp) ? 1 : 0));
  };
  return {
    plain: (left) =>
      byLying(
        left.map((s) => fixed[s] as StepOnAxis | null),
        restOf(left),
        flipsFor(left),
      ),
    informed: (ahead) => {
      const steps = ahead.open.map((list) => (list === null ? null : onAxis(list.map((c) => c.way))));
      const left = ahead.open.flatMap((list, s) => (list === null ? [] : [s]));
      const further = flipsFor(left);
      const flips: Flips = (at) => Math.max(ahead.flips(at?.faceUp ?? null), further(at));
      const loose = ahead.open.flatMap((list, s) =>
        list !== null && list.length > 0 && steps[s] === null
          ? [whole(list.map((c) => c.way))[0] as number]
          : [],
      );
      const apart = byLying(
        steps,
        loose.reduce((a, b) => a + b, 0),
        flips,
      );
      const { used } = summed(steps, axes.size);
      // rivals are paired whichever way the part lies
      const paired = tasksOf(ahead, whole).reduce((sum, task) => sum + task(1), 0);
      return (at) => Math.max(apart(at), paired + coming(used, at) + flip * flips(at));
    },
  };
}

/** Seconds of all steps on an axis with one end to the operator, with the other, and with the better one for each; and the axes there are. */
function summed(
  steps: Steps,
  count: number,
): { readonly sums: Float64Array; readonly used: ReadonlySet<number> } {
  const sums = new Float64Array(3 * count);
  const used = new Set<number>();
  for (const step of steps) {
    if (step === null) continue;
    const { axis, seconds } = step;
    used.add(axis);
    const [near, far] = seconds;
    for (const [i, s] of [near, far, Math.min(near, far)].entries())
      sums[3 * axis + i] = (sums[3 * axis + i] as number) + s;
  }
  return { sums, used };
}
