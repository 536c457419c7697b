import { MM_PER_INCH } from '@tinwright/core';

/** A length as an inch fraction, with what rounding did to it. */
export interface Fraction {
  /** `15 1/2 in`; `~15 1/2 in` when the fraction is not exact. */
  readonly text: string;
  /** Printed length minus true length, mm. 0 when exact (within 1e-9 mm). */
  readonly error: number;
}

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/**
 * Print a length in inches as a fraction rounded to the nearest 1/`denominator`.
 * @param mm length in millimetres, any finite value
 * @param denominator a power of two from 1 to 128
 * @throws RangeError for another denominator or a length that is not finite
 */
export function formatFraction(mm: number, denominator: number): Fraction {
  if (![1, 2, 4, 8, 16, 32, 64, 128].includes(denominator))
    throw new RangeError(`denominator ${denominator} given, a power of two from 1 to 128 allowed`);
  if (!Number.isFinite(mm)) throw new RangeError(`length ${mm} given, a finite number allowed`);
  const steps = Math.round(Math.abs(mm / MM_PER_INCH) * denominator);
  const sign = mm < 0 && steps > 0 ? '-' : '';
  const whole = Math.floor(steps / denominator);
  const top = steps - whole * denominator;
  const g = gcd(top, denominator);
  const fraction = top === 0 ? '' : `${top / g}/${denominator / g}`;
  const number = [whole === 0 && top > 0 ? '' : String(whole), fraction].filter((s) => s !== '').join(' ');
  const printed = ((sign === '-' ? -1 : 1) * steps * MM_PER_INCH) / denominator;
  const error = Math.abs(printed - mm) < 1e-9 ? 0 : printed - mm;
  return { text: `${error === 0 ? '' : '~'}${sign}${number} in`, error };
}
