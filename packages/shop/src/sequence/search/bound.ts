import { keptBy, type Mask, stepsOf, union, without } from '../part/mask.js';
import { bestTours } from './best-tours.js';
import { byAxes } from './by-axes.js';
import { changesOf, type Lies } from './changes.js';
import { type GaugingDue, gaugingDue, gaugingStep } from './gauging.js';
import type { BoundInput, ByLying } from './handled.js';
import type { Ahead } from './precedence.js';
import { waysFor } from './strokes.js';
import type { Bearing } from './turns.js';
import type { Way } from './ways.js';

/** Least seconds still to come from a state; more of them with what is known to lie ahead of it. */
export type Bound = (done: Mask, at: Lies | null, ahead?: Ahead | null) => number;

const MOST_LIES = 8; // ways to lie of which every choice is weighed

/**
 * Least seconds still to come from a state, geometry left out: every stroke with the way to it, shared among the steps
 * it can do at once, in the best choice of ways to lie with the shortest tour through them, and a change for every further
 * stop and set-back that the steps left cannot do without. Never more than the true rest (Hart, Nilsson, Raphael 1968),
 * so a search by it finds the cheapest plan. Where a part can lie in too many ways, the choice is made axis by axis.
 */
export function boundOf(input: BoundInput): Bound {
  const { work, costs } = input;
  const lies = liesOf(input.ways.flat());
  const changes = changesOf({ ...input, steps: work.steps.length });
  const handled = lies.length > MOST_LIES ? byAxes(input) : bestTours(input, lies);
  const leftOf = (done: Mask) => stepsOf(without(work.all, done));
  const stops = gaugingFor(input);
  const sum = (done: Mask, strokes: ByLying, ahead: Ahead | null): ByLying => {
    const left = leftOf(done);
    const changed = changes(left);
    const gauging = stops(done, ahead);
    // the first operation is not slid to
    return (at) =>
      left.length === 0
        ? 0
        : strokes(at) + changed(at) + gauging(at?.gauge ?? 0n) - (at === null ? costs.slide : 0);
  };
  const plain = keptBy(work.all, (done) => {
    return sum(done, handled.plain(leftOf(done)), null);
  });
  const informed = new WeakMap<Ahead, ByLying>();
  return (done, at, ahead = null) => {
    if (ahead === null) return plain(done)(at);
    const made = informed.get(ahead) ?? sum(done, handled.informed(ahead), ahead);
    informed.set(ahead, made);
    return made(at);
  };
}

/** What setting stops and lines takes for the steps left. */
function gaugingFor({ work, ways, costs }: BoundInput): (done: Mask, ahead: Ahead | null) => GaugingDue {
  const needs = work.steps.map((s) => gaugingStep(waysFor(ways, s.index), costs));
  return (done, ahead) => {
    const left = stepsOf(without(work.all, done));
    if (ahead === null) return gaugingDue(left.flatMap((s) => needs[s]?.(done) ?? []));
    const own = left.flatMap((s) => {
      const open = (ahead.open[s] ?? []).map((c) => c.way);
      return gaugingStep(open, costs)(union(done, ahead.before(s))) ?? [];
    });
    return gaugingDue(own);
  };
}

/** The ways to lie that a part is bent in. */
function liesOf(ways: readonly Way[]): readonly Bearing[] {
  const lies = new Map(ways.map(({ faceUp, heading }) => [`${heading} ${faceUp}`, { faceUp, heading }]));
  return [...lies.values()].toSorted(
    (a, b) => a.heading - b.heading || Number(a.faceUp === 'marked') - Number(b.faceUp === 'marked'),
  );
}
