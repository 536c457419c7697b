import { MM_PER_INCH, type Unit } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';

/** `432.46`: a length in the unit of the job, to a hundredth of a millimetre or a thousandth of an inch. */
export function sizeText(mm: number, units: Unit): string {
  const [per, digits] = units === 'mm' ? [1, 2] : [MM_PER_INCH, 3];
  return plainNumber(mm / per, digits);
}

/** `0.0359 in`: a length that was given, with its unit and four decimals, which gauges and fractions of an inch need. */
export function givenText(mm: number, units: Unit): string {
  return `${plainNumber(units === 'mm' ? mm : mm / MM_PER_INCH, 4)} ${units}`;
}

/** Steps a worked-out length is printed in: hundredths of a millimetre, ten-thousandths of an inch. */
const stepsOf = (units: Unit) => (units === 'mm' ? { per: 1, digits: 2 } : { per: MM_PER_INCH, digits: 4 });

/** `0.0697 in`: a worked-out length with its unit, fine enough to follow the working. */
export function workedText(mm: number, units: Unit): string {
  const { per, digits } = stepsOf(units);
  return `${plainNumber(mm / per, digits)} ${units}`;
}

/** Terms as they are printed, and whether one was rounded the other way for their sum's sake. */
export interface TextColumn {
  readonly terms: readonly string[];
  readonly carried: boolean;
}

/**
 * Worked-out lengths of a sum, printed so that they add up to the printed sum: what rounding adds to one is taken from
 * the next. Signs are left to the caller.
 */
export function columnOf(lengths: readonly number[], units: Unit): TextColumn {
  const { per, digits } = stepsOf(units);
  const steps = (mm: number) => Math.round((mm / per) * 10 ** digits * (1 + 4 * Number.EPSILON));
  let [sum, printed] = [0, 0];
  const terms = lengths.map((mm) => {
    sum += mm;
    const own = steps(sum) - printed;
    printed += own;
    return own;
  });
  return {
    terms: terms.map((t) => `${plainNumber(Math.abs(t) / 10 ** digits, digits)} ${units}`),
    carried: terms.some((t, i) => t !== steps(lengths[i] as number)),
  };
}
