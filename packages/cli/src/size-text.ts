import { MM_PER_INCH, plainNumber, type Unit } from '@tinwright/core';

/** `432.46`: a length in the unit of the job, to a hundredth of a millimetre or a thousandth of an inch. */
export function sizeText(mm: number, units: Unit): string {
  const [per, digits] = units === 'mm' ? [1, 2] : [MM_PER_INCH, 3];
  return plainNumber(mm / per, digits);
}
