import type { Costs } from '../../machines/shop.js';
import { type Mask, stepsOf, without } from '../part/mask.js';
import type { Work } from '../part/operations.js';
import type { PlacingInput, Position } from './handling.js';
import type { Ahead } from './precedence.js';
import { leastTurning } from './turns.js';
import type { Way } from './ways.js';

/** What a bound is computed from. */
export interface BoundInput extends PlacingInput {
  readonly work: Work;
  readonly ways: readonly (readonly Way[])[];
}

/** How a part lies, as far as a bound hangs on it. */
export type Lies = Pick<Position, 'faceUp' | 'heading' | 'stop' | 'setBack'>;

/** Least seconds still to come from a state; more of them with what is known to lie ahead of it. */
export type Bound = (done: Mask, at: Lies | null, ahead?: Ahead | null) => number;

/** What a step cannot do without, as bits: a side up, an axis, a stop, a set-back; and its seconds in every direction. */
interface Least {
  readonly face: number;
  readonly axis: number;
  readonly stop: number;
  readonly setBack: number;
  /** Share of a stroke with the way to it, by direction; infinite where it cannot be made so. */
  readonly seconds: readonly number[];
}

/** Directions a plan comes by: which they are, as bits, and the seconds of every step then. */
interface Directions {
  readonly bits: number;
  readonly headings: readonly number[];
  readonly seconds: readonly number[];
}

const MOST_HEADINGS = 5; // directions of which every choice is weighed

/**
 * Least seconds still to come from a state, geometry left out: every stroke with the way to it, shared among the steps
 * it can do at once, in the best choice of directions with the turns between them, and a change for every further side
 * up, stop and set-back that the steps left cannot do without. Never more than the true rest (Hart, Nilsson, Raphael
 * 1968), so a search by it finds the cheapest plan.
 */
export function boundOf(input: BoundInput): Bound {
  const { work, costs, scale, ways } = input;
  const names = { face: naming(), axis: naming(), stop: naming(), setBack: naming() };
  const headings = [...new Set(ways.flat().map((w) => w.heading))].toSorted((a, b) => a - b);
  const steps = work.steps.map((s) => leastOf(input, s.index, headings, names));
  const choices = directionsOf(steps, headings);
  // choices of directions count their own turns
  const axis = choices.length > 1 ? 0 : scale * Math.min(costs.turn90, costs.turn180);
  const each = { face: scale * costs.flip, axis, stop: costs.stop, setBack: costs.setBack };
  const kinds = ['face', 'axis', 'stop', 'setBack'] as const;
  const turning = new Map<number, number>();
  const turns = (choice: Directions, heading: number | null): number => {
    const from = heading === null ? -1 : headings.indexOf(heading);
    const key = choice.bits * (MOST_HEADINGS + 2) + from + 1;
    const known = turning.get(key);
    if (known !== undefined) return known;
    const all = from < 0 ? choice.headings : [...new Set([headings[from] as number, ...choice.headings])];
    const made = scale * leastTurning(all, costs);
    turning.set(key, made);
    return made;
  };
  /** A change for every further value that the steps left cannot do without; at the start one costs nothing. */
  const changes = (kind: Kind, left: readonly number[], at: Lies | null): number => {
    let wanted = 0;
    for (const s of left) wanted |= (steps[s] as Least)[kind];
    const now = at === null ? 0 : names[kind].bit(valueAt(at, kind));
    return Math.max(0, bitsIn(wanted & ~now) - (now === 0 && wanted !== 0 ? 1 : 0));
  };
  /** The strokes with the turns between them, in the best choice of directions. */
  const strokes = (left: readonly number[], at: Lies | null, ahead: Ahead | null): number => {
    const own = ahead === null ? null : left.map((s) => byHeading(ahead.ways[s] ?? [], headings, costs));
    return Math.min(
      ...choices.map((choice) => {
        let seconds = choices.length === 1 ? 0 : turns(choice, at?.heading ?? null);
        if (own === null) for (const s of left) seconds += choice.seconds[s] as number;
        else for (const of of own) seconds += leastIn(of, choice.bits);
        return seconds;
      }),
    );
  };
  return (done, at, ahead = null) => {
    const left = stepsOf(without(work.all, done));
    if (left.length === 0) return 0;
    // the first operation is not slid to
    let least = strokes(left, at, ahead) - (at === null ? costs.slide : 0);
    for (const kind of kinds) {
      const flips = kind === 'face' && ahead !== null ? ahead.flips(at?.faceUp ?? null) : 0;
      least += Math.max(flips, changes(kind, left, at)) * each[kind];
    }
    return least;
  };
}

/** Seconds of a step in every direction, by some of its ways. */
const byHeading = (ways: readonly Way[], headings: readonly number[], costs: Costs): readonly number[] =>
  headings.map((h) => {
    let least = Infinity;
    for (const w of ways)
      if (w.heading === h) least = Math.min(least, (w.seconds + costs.slide) / w.operation.steps.length);
    return least;
  });

/** The least of a choice of directions. */
function leastIn(seconds: readonly number[], bits: number): number {
  let least = Infinity;
  for (let i = 0; i < seconds.length; i++)
    if (seconds.length > MOST_HEADINGS || (bits & (1 << i)) !== 0)
      least = Math.min(least, seconds[i] as number);
  return least;
}

/** Every choice of directions; where there are too many, the one of all: axes are counted then. */
function directionsOf(steps: readonly Least[], headings: readonly number[]): readonly Directions[] {
  const every = 2 ** headings.length - 1;
  const choices = headings.length > MOST_HEADINGS ? [every] : Array.from({ length: every }, (_, i) => i + 1);
  return choices.map((bits) => ({
    bits,
    headings: headings.filter((_, i) => headings.length > MOST_HEADINGS || (bits & (1 << i)) !== 0),
    seconds: steps.map(({ seconds }) => {
      const own = seconds.filter((_, i) => headings.length > MOST_HEADINGS || (bits & (1 << i)) !== 0);
      // a step that no machine can make is no part of a bound
      return seconds.every((s) => s === Infinity) ? 0 : Math.min(...own);
    }),
  }));
}

type Kind = Exclude<keyof Least, 'seconds'>;

function valueAt({ faceUp, heading, stop, setBack }: Lies, kind: Kind): string | number | null {
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
  { ways, costs }: BoundInput,
  step: number,
  headings: readonly number[],
  names: Readonly<Record<Kind, ReturnType<typeof naming>>>,
): Least {
  const own = ways.flat().filter((w) => w.operation.steps.includes(step));
  /** The bit that all ways share; 0 where they differ. */
  const only = (kind: Kind, value: (way: Way) => string | number | null): number => {
    const values = new Set(own.map(value));
    const [first] = values;
    return values.size === 1 && first !== undefined ? names[kind].bit(first) : 0;
  };
  return {
    seconds: byHeading(own, headings, costs),
    face: only('face', (w) => w.faceUp),
    axis: only('axis', (w) => w.heading % 180),
    stop: only('stop', (w) => w.stop),
    setBack: only('setBack', (w) => w.setBack),
  };
}
