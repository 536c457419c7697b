import type { Hope } from './guide.js';

/** Ways on from a state by their numbers, and the seconds each promises: ten bytes a way, for there are many that wait. */
export interface PackedHopes {
  readonly ways: Uint16Array;
  readonly least: Float64Array;
}

export const packedHopes = (hopes: readonly Hope[]): PackedHopes => ({
  ways: Uint16Array.from(hopes, (h) => h.way.index),
  least: Float64Array.from(hopes, (h) => h.least),
});
