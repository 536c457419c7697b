/** A set of up to 60 steps, in two halves of 30 bits. */
export interface Mask {
  readonly low: number;
  readonly high: number;
}

/** Most steps a mask holds. */
export const MOST_STEPS = 60;
const HALF = 30;

/** No step. */
export const NONE: Mask = { low: 0, high: 0 };

/** The set of these steps. */
export function maskOf(steps: readonly number[]): Mask {
  let [low, high] = [0, 0];
  for (const s of steps) {
    if (s < HALF) low |= 1 << s;
    else high |= 1 << (s - HALF);
  }
  return { low, high };
}

export const has = ({ low, high }: Mask, step: number): boolean =>
  step < HALF ? (low & (1 << step)) !== 0 : (high & (1 << (step - HALF))) !== 0;

export const union = (a: Mask, b: Mask): Mask => ({ low: a.low | b.low, high: a.high | b.high });

export const both = (a: Mask, b: Mask): Mask => ({ low: a.low & b.low, high: a.high & b.high });

/** The steps of the first that are not in the second. */
export const without = (a: Mask, b: Mask): Mask => ({ low: a.low & ~b.low, high: a.high & ~b.high });

export const isEmpty = ({ low, high }: Mask): boolean => low === 0 && high === 0;

export const sameMask = (a: Mask, b: Mask): boolean => a.low === b.low && a.high === b.high;

/** True when all of the first are in the second. */
export const within = (a: Mask, b: Mask): boolean => (a.low & ~b.low) === 0 && (a.high & ~b.high) === 0;

const EXACT = 2 ** 22; // of the high half beside 30 bits in a number that counts exactly

/** A key for maps: a number as long as it is exact. */
export const keyOf = ({ low, high }: Mask): number | string =>
  high < EXACT ? low + high * 2 ** HALF : `${high}:${low}`;

/** Numbers of the steps in a set, in order. */
export function stepsOf({ low, high }: Mask): readonly number[] {
  const steps: number[] = [];
  for (let bits = low; bits !== 0; bits &= bits - 1) steps.push(31 - Math.clz32(bits & -bits));
  for (let bits = high; bits !== 0; bits &= bits - 1) steps.push(HALF + 31 - Math.clz32(bits & -bits));
  return steps;
}

/**
 * A function of a state that hangs on some steps alone, its answers kept.
 * @param most answers kept before all but the last are dropped
 */
export function keptBy<T>(steps: Mask, make: (done: Mask) => T, most: number = MOST_KEPT): (done: Mask) => T {
  return lastBy(steps, most <= 1 ? make : knownBy(make, most));
}

/** The last answer kept: states that are asked for one after another are much alike. */
function lastBy<T>(steps: Mask, make: (done: Mask) => T): (done: Mask) => T {
  let [low, high] = [-1, -1];
  let last: T;
  return (done) => {
    const [l, h] = [done.low & steps.low, done.high & steps.high];
    if (l === low && h === high) return last;
    [low, high] = [l, h];
    last = make({ low, high });
    return last;
  };
}

/** So many answers kept. */
function knownBy<T>(make: (own: Mask) => T, most: number): (own: Mask) => T {
  let known: Map<number | string, T> | null = null;
  return (own) => {
    known ??= new Map();
    const key = keyOf(own);
    const before = known.get(key);
    if (before !== undefined) return before;
    const made = make(own);
    if (known.size >= most) known.clear();
    known.set(key, made);
    return made;
  };
}

const MOST_KEPT = 4096;
