import type { Costs } from '../../machines/shop.js';
import type { Held } from '../part/line.js';
import { type Mask, stepsOf, without } from '../part/mask.js';
import type { Operation, Work } from '../part/operations.js';
import type { Station } from '../stations/station.js';
import { type Position, type Setting, strokeCost } from './handling.js';

/** What a bound is computed from. */
export interface BoundInput {
  readonly work: Work;
  readonly stations: readonly Station[];
  readonly costs: Costs;
  readonly scale: number;
  readonly heading: (operation: Operation, held: Held) => number;
  readonly setting: (operation: Operation, station: Station) => Setting;
}

/** What a step takes at least, and what it cannot do without, as bits: a side up, an axis, a stop, a set-back. */
interface Least {
  readonly seconds: number;
  readonly face: number;
  readonly axis: number;
  readonly stop: number;
  readonly setBack: number;
}

/**
 * Least seconds still to come from a state: every stroke with the way to it, shared among the steps it can do at once,
 * and a change for every further side up, axis, stop and set-back that the steps left cannot do without. Never more
 * than the true rest, so a search by it finds the cheapest plan.
 */
export function boundOf(input: BoundInput): (done: Mask, at: Position | null) => number {
  const { work, costs, scale } = input;
  const names = { face: naming(), axis: naming(), stop: naming(), setBack: naming() };
  const steps = work.steps.map((s) => leastOf(input, s.index, names));
  const turn = scale * Math.min(costs.turn90, costs.turn180);
  const each = { face: scale * costs.flip, axis: turn, stop: costs.stop, setBack: costs.setBack };
  const kinds = ['face', 'axis', 'stop', 'setBack'] as const;
  return (done, at) => {
    const left = stepsOf(without(work.all, done));
    if (left.length === 0) return 0;
    // the first operation is not slid to
    let seconds = at === null ? -costs.slide : 0;
    for (const s of left) seconds += (steps[s] as Least).seconds;
    for (const kind of kinds) {
      let wanted = 0;
      for (const s of left) wanted |= (steps[s] as Least)[kind];
      const now = at === null ? 0 : names[kind].bit(valueAt(at, kind));
      // at the start one of them costs nothing
      const changes = bitsIn(wanted & ~now) - (now === 0 && wanted !== 0 ? 1 : 0);
      seconds += Math.max(0, changes) * each[kind];
    }
    return seconds;
  };
}

type Kind = Exclude<keyof Least, 'seconds'>;

function valueAt({ faceUp, heading, stop, setBack }: Position, kind: Kind): string | number | null {
  if (kind === 'face') return faceUp;
  if (kind === 'axis') return heading % 180;
  return kind === 'stop' ? stop : setBack;
}

/** Bits for values as they are met; 0 for null and for what no longer fits in 30 bits. */
function naming(): { readonly bit: (value: string | number | null) => number } {
  const known: (string | number)[] = [];
  return {
    bit: (value) => {
      if (value === null) return 0;
      const i = known.indexOf(value);
      if (i < 0 && known.length < BITS) known.push(value);
      const at = i < 0 ? known.indexOf(value) : i;
      return at < 0 ? 0 : 1 << at;
    },
  };
}

const BITS = 30;

function bitsIn(mask: number): number {
  let count = 0;
  for (let m = mask; m !== 0; m &= m - 1) count += 1;
  return count;
}

function leastOf(
  { work, stations, costs, heading, setting }: BoundInput,
  step: number,
  names: Readonly<Record<Kind, ReturnType<typeof naming>>>,
): Least {
  const ways = work.operations
    .filter((o) => o.steps.includes(step))
    .flatMap((o) =>
      stations.flatMap((s) =>
        (['parent', 'child'] as const).flatMap((held) =>
          s.limits(o, held) === null ? [{ o, s, held }] : [],
        ),
      ),
    );
  if (ways.length === 0) return { seconds: 0, face: 0, axis: 0, stop: 0, setBack: 0 };
  /** The bit that all ways share; 0 where they differ. */
  const only = (kind: Kind, value: (way: (typeof ways)[number]) => string | number | null): number => {
    const values = new Set(ways.map(value));
    const [first] = values;
    return values.size === 1 && first !== undefined ? names[kind].bit(first) : 0;
  };
  return {
    seconds: Math.min(...ways.map(({ o, s }) => (strokeCost(o, s, costs) + costs.slide) / o.steps.length)),
    face: only('face', ({ o }) => (o.angle > 0 ? 'marked' : 'unmarked')),
    axis: only('axis', ({ o, held }) => heading(o, held) % 180),
    stop: only('stop', ({ o, s }) => setting(o, s).stop),
    setBack: only('setBack', ({ o, s }) => setting(o, s).setBack),
  };
}
