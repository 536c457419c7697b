import type { PlacingInput, Position } from './handling.js';
import type { Way } from './ways.js';

/** How a part lies, as far as a bound hangs on it. */
export interface Lies extends Pick<Position, 'faceUp' | 'heading' | 'stop' | 'setBack'> {
  /** Bits of what a stop may be set to; 0n for nothing yet. */
  readonly gauge: bigint;
}

/** What is set on a machine from one stroke to the next. */
type Kind = 'stop' | 'setBack';

const KINDS: readonly Kind[] = ['stop', 'setBack'];

/** Least seconds of setting stop angle and set-back for the steps left. */
export type Changes = (left: readonly number[]) => (at: Lies | null) => number;

/** A change for every further value that the steps left cannot do without; at the start one costs nothing. */
export function changesOf({ ways, costs, steps }: PlacingInput & ChangesInput): Changes {
  const wants = KINDS.map((kind) => {
    const names = naming();
    return { kind, names, bits: Array.from({ length: steps }, (_, s) => onlyBit(ways, s, kind, names)) };
  });
  return (left) => {
    const wanted = wants.map(({ bits }) => left.reduce((all, s) => all | (bits[s] as number), 0));
    return (at) => {
      let seconds = 0;
      wants.forEach(({ kind, names }, i) => {
        const all = wanted[i] as number;
        const now = at === null ? 0 : names.bit(at[kind]);
        const further = Math.max(0, count(all & ~now) - (now === 0 && all !== 0 ? 1 : 0));
        seconds += further * costs[kind];
      });
      return seconds;
    };
  };
}

interface ChangesInput {
  readonly ways: readonly (readonly Way[])[];
  /** How many there are. */
  readonly steps: number;
}

/** The bit that all ways of a step share; 0 where they differ. */
function onlyBit(ways: readonly (readonly Way[])[], step: number, kind: Kind, names: Names): number {
  const own = ways.flat().filter((w) => w.operation.steps.includes(step));
  const values = new Set(own.map((w) => w[kind]));
  const [first] = values;
  return values.size === 1 && first !== undefined ? names.bit(first) : 0;
}

type Names = ReturnType<typeof naming>;

/** Bits for values as they are met; 0 for null and for what no longer fits in 30 bits. */
function naming(): { readonly bit: (value: number | null) => number } {
  const known: number[] = [];
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

function count(mask: number): number {
  let bits = 0;
  for (let m = mask; m !== 0; m &= m - 1) bits += 1;
  return bits;
}
