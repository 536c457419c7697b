/** Numbers from 0 up to 1, the same for the same seed (Marsaglia 2003, xorshift of 32 bits). */
export function randomFrom(seed: number): () => number {
  // in an array of integers: a number past 2^30 in a variable would be a new object on the heap at every call
  const state = Int32Array.of(Math.imul(seed, 0x9e3779b1) ^ 0x5bd1e995 || 1);
  return () => {
    let s = state[0] as number;
    s ^= s << 13;
    s ^= s >>> 17;
    s ^= s << 5;
    state[0] = s;
    return (s >>> 0) / 0x100000000;
  };
}
