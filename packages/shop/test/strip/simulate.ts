import { outsideSetback } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';

/** Numbers that look random and are the same for the same seed: a 32-bit xorshift, as normal deviates (Box and Muller). */
export function noise(seed: number): () => number {
  let state = seed | 0 || 1;
  const uniform = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return ((state >>> 0) + 0.5) / 2 ** 32;
  };
  for (let i = 0; i < 20; i++) uniform();
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

/** The metal as it truly is, and how well it is read. mm, degrees */
export interface Truth {
  readonly thickness: number;
  readonly insideRadius: number;
  readonly k: number;
  /** Angle left over angle set. */
  readonly factor: number;
  readonly length: number;
  readonly angle: number;
}

/** Strips of 100 between their lines, set to near 90, bent by the formula and read with noise: a file of them as data. */
export function simulated(truth: Truth, count: number, seed: number): object {
  const { thickness: T, insideRadius: R, k } = truth;
  const off = noise(seed);
  const strips = Array.from({ length: count }, (_, i) => {
    const set = 88 + (i % 5);
    const left = set * truth.factor;
    const legs =
      100 + 2 * outsideSetback({ thickness: T, insideRadius: R, angle: left }) - radians(left) * (R + k * T);
    const first = legs / 2 + (i % 3) - 1;
    return {
      flat: 100 + truth.length * off(),
      legs: [first + truth.length * off(), legs - first + truth.length * off()],
      angle: left + truth.angle * off(),
      set: set + truth.angle * off(),
    };
  });
  return {
    units: 'mm',
    material: 'mild-steel',
    thickness: T,
    insideRadius: R,
    reading: { length: truth.length, angle: truth.angle },
    strips,
  };
}
