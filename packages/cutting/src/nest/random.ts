/** Numbers from 0 up to 1, the same for the same seed (Marsaglia 2003, xorshift of 32 bits). */
export function randomFrom(seed: number): () => number {
  let state = (Math.imul(seed, 0x9e3779b1) ^ 0x5bd1e995) >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 0x100000000;
  };
}
