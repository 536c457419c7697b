import { MM_PER_INCH, type Unit } from '@tinwright/core';
import { frozen, plainNumber } from '@tinwright/core/internal';
import type { DimsName } from '@tinwright/words/internal';
import { formatFraction } from '../fraction.js';

/** Every way to print sizes. */
export const DIMS_NAMES: readonly DimsName[] = frozen(['mm', 'in', '1/8', '1/16', '1/32', '1/64']);

/** A size as it is printed on a plan. Every size is rounded by itself, from where it is measured. */
export interface Dims {
  readonly name: DimsName;
  readonly unit: Unit;
  /** Printed without its unit: `436.5`, `17.184`, `17 3/16`. */
  readonly text: (mm: number) => string;
  /** What is printed, read back, less the size, mm. */
  readonly error: (mm: number) => number;
  /** The size finer than a rule shows it, for comparing: `17.1834`. */
  readonly fine: (mm: number) => string;
  /** An angle in degrees, a tenth at the finest: `90°`. */
  readonly angle: (degrees: number) => string;
  /** True when what is printed may be off by more than a scriber's line. */
  readonly coarse: boolean;
}

/** Tenths of a millimetre, thousandths of an inch: half of that is within the finest tolerance of ISO 2768-1 m. */
const DECIMALS = { mm: 1, in: 3 } as const;

const angle = (degrees: number): string => `${plainNumber(degrees, 1)}°`;

/** Sizes printed in this way. */
export function dimsOf(name: DimsName): Dims {
  if (name === 'mm' || name === 'in') return decimals(name);
  const denominator = Number(name.slice(2));
  const fraction = (mm: number) => formatFraction(mm, denominator);
  return {
    name,
    unit: 'in',
    text: (mm) => fraction(mm).text.replace('~', '').replace(' in', ''),
    error: (mm) => fraction(mm).error,
    fine: (mm) => plainNumber(mm / MM_PER_INCH, 4),
    angle,
    coarse: true,
  };
}

function decimals(unit: Unit): Dims {
  const per = unit === 'mm' ? 1 : MM_PER_INCH;
  const text = (mm: number) => plainNumber(mm / per, DECIMALS[unit]);
  return {
    name: unit,
    unit,
    text,
    error: (mm) => Number(text(mm)) * per - mm,
    fine: (mm) => plainNumber(mm / per, DECIMALS[unit] + 1),
    angle,
    coarse: false,
  };
}
