import type { Costs } from '../machines/shop.js';
import { type Position, strokeCost } from './handling.js';
import { type Mask, stepsOf, without } from './mask.js';
import type { Operation, Work } from './operations.js';
import type { Station } from './station.js';

/** What a bound is computed from. */
export interface BoundInput {
  readonly work: Work;
  readonly stations: readonly Station[];
  readonly costs: Costs;
  readonly scale: number;
}

/** What a step takes at least, and which side up it cannot do without. */
interface Least {
  readonly seconds: number;
  /** Null where a hand could do it, whichever side is up. */
  readonly face: Position['faceUp'] | null;
}

/**
 * Least seconds still to come from a state: every stroke with the way to it, shared among the steps it can do at once,
 * and the flips that cannot be avoided. Never more than the true rest, so a search by it finds the cheapest plan.
 */
export function boundOf(input: BoundInput): (done: Mask, at: Position | null) => number {
  const { work, costs, scale } = input;
  const steps = work.steps.map((s) => leastOf(input, s.index));
  const flip = scale * Math.max(0, costs.flip - costs.slide);
  return (done, at) => {
    const left = stepsOf(without(work.all, done)).map((s) => steps[s] as Least);
    if (left.length === 0) return 0;
    const seconds = left.reduce((sum, s) => sum + s.seconds, 0);
    // the first operation is not slid to
    return seconds + flip * flipsLeft(left, at) - (at === null ? costs.slide : 0);
  };
}

function leastOf({ work, stations, costs }: BoundInput, step: number): Least {
  const ways = work.operations.filter((o) => o.steps.includes(step));
  const open = (o: Operation, s: Station) =>
    (['parent', 'child'] as const).some((held) => s.limits(o, held) === null);
  const seconds = ways.flatMap((o) =>
    stations.filter((s) => open(o, s)).map((s) => (strokeCost(o, s, costs) + costs.slide) / o.steps.length),
  );
  const byHand = ways.some((o) =>
    stations.some((s) => (s.name === 'vise' || s.name === 'hand') && open(o, s)),
  );
  const up = (ways[0]?.angle ?? 1) > 0 ? 'marked' : 'unmarked';
  return { seconds: seconds.length === 0 ? 0 : Math.min(...seconds), face: byHand ? null : up };
}

function flipsLeft(left: readonly Least[], at: Position | null): number {
  const needs = (face: Position['faceUp']) => left.some((s) => s.face === face);
  if (at === null) return needs('marked') && needs('unmarked') ? 1 : 0;
  return needs(at.faceUp === 'marked' ? 'unmarked' : 'marked') ? 1 : 0;
}
