import { createHash } from 'node:crypto';

/** Two numbers under each text, in some 30 bytes however long it is. */
export interface TextTable {
  readonly get: (text: string) => readonly [number, number] | undefined;
  readonly set: (text: string, numbers: readonly [number, number]) => void;
}

/** Keys are two words of a hash. */
interface Slots {
  readonly size: number;
  readonly keys: Uint32Array;
  readonly first: Float64Array;
  readonly second: Uint32Array;
}

const START = 1024; // slots, a power of two
const FULLEST = 0.7;

/**
 * A table for millions of texts, which are not kept: 64 bits of their hash stand for them. Among a million, two fall
 * together once in some thirty million tables. The first number is exact up to 2^53, the second up to 2^32.
 */
export function textTable(): TextTable {
  let [slots, used] = [slotsFor(START), 0];
  return {
    get: (text) => {
      const at = slotOf(slots, ...keyOf(text));
      return slots.keys[2 * at + 1] === 0
        ? undefined
        : [slots.first[at] as number, slots.second[at] as number];
    },
    set: (text, [first, second]) => {
      if (used > slots.size * FULLEST) slots = grown(slots);
      if (put(slots, keyOf(text), first, second)) used += 1;
    },
  };
}

const slotsFor = (size: number): Slots => ({
  size,
  keys: new Uint32Array(2 * size),
  first: new Float64Array(size),
  second: new Uint32Array(size),
});

/** The second word is never 0, which stands in a slot that is free. */
function keyOf(text: string): readonly [number, number] {
  const hash = createHash('sha256').update(text).digest();
  return [hash.readUInt32LE(0), hash.readUInt32LE(4) || 1];
}

/** Where a key is, or would be. */
function slotOf({ size, keys }: Slots, low: number, high: number): number {
  let at = low & (size - 1);
  while (keys[2 * at + 1] !== 0 && (keys[2 * at] !== low || keys[2 * at + 1] !== high))
    at = (at + 1) & (size - 1);
  return at;
}

/** True when the key is new. */
function put(slots: Slots, [low, high]: readonly [number, number], first: number, second: number): boolean {
  const at = slotOf(slots, low, high);
  const fresh = slots.keys[2 * at + 1] === 0;
  slots.keys.set([low, high], 2 * at);
  slots.first[at] = first;
  slots.second[at] = second;
  return fresh;
}

function grown(old: Slots): Slots {
  const slots = slotsFor(2 * old.size);
  for (let i = 0; i < old.size; i++) {
    const [low, high] = [old.keys[2 * i] as number, old.keys[2 * i + 1] as number];
    if (high !== 0) put(slots, [low, high], old.first[i] as number, old.second[i] as number);
  }
  return slots;
}
