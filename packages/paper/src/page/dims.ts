import { MM_PER_INCH, parseLength, type Unit } from '@tinwright/core';
import { frozen, plainNumber } from '@tinwright/core/internal';
import type { Language } from '@tinwright/words';
import { type DimsName, inDecimal } from '@tinwright/words/internal';
import { type Fraction, formatFraction } from './fraction.js';

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
  /** A text whose numbers have a point as it is printed. */
  readonly own: (text: string) => string;
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
  // a short distance would lose too much of itself
  const short = (FEW_STEPS * MM_PER_INCH) / denominator;
  const fraction = (mm: number) =>
    formatFraction(mm, Math.abs(mm) < short ? Math.min(4 * denominator, FINEST) : denominator);
  return {
    name,
    unit: 'in',
    text: (mm) => bare(fraction(mm)),
    error: (mm) => fraction(mm).error,
    fine: (mm) => plainNumber(mm / MM_PER_INCH, 4),
    angle,
    own: same,
    coarse: true,
  };
}

const same = (text: string): string => text;

/** The same with numbers as a language writes them. */
export function dimsIn(dims: Dims, language: Language): Dims {
  const own = (text: string) => inDecimal(text, language);
  return {
    ...dims,
    text: (mm) => own(dims.text(mm)),
    fine: (mm) => own(dims.fine(mm)),
    angle: (degrees) => own(dims.angle(degrees)),
    own,
  };
}

const FEW_STEPS = 3; // of the rule: what is shorter is printed finer
const FINEST = 64; // part of an inch that a rule shows

/** A fraction without its unit, whether it is exact or not. */
const bare = ({ text }: Fraction): string => text.replace('~', '').replace(' in', '');

/** What is one line on the sheet, mm. */
const SAME = 0.02;

/** Sizes that a plan prints. mm */
export interface PrintedSizes {
  /** Where its lines lie: of two that are not the same no number is. */
  readonly lines: readonly number[];
  /** What goes into something: printed no larger than it is. */
  readonly inside: readonly number[];
}

/**
 * The same way to print sizes, held to what a plan has to tell apart: lines that would print alike are printed finer,
 * down to thousandths where no rule shows them, and what goes into something is rounded down.
 */
export function heldApart(dims: Dims, { lines, inside }: PrintedSizes): Dims {
  if (!dims.coarse) return dims;
  const base = Number(dims.name.slice(2));
  const steps = [base, 2 * base, 4 * base, 8 * base].filter((d) => d <= FINEST);
  const distinct = [...lines]
    .map(Math.abs)
    .toSorted((a, b) => a - b)
    .filter((v, i, all) => i === 0 || v - (all[i - 1] as number) > SAME);
  const alike = new Map<string, number[]>();
  for (const v of distinct) alike.set(dims.text(v), [...(alike.get(dims.text(v)) ?? []), v]);
  const printed = new Map<number, string>();
  for (const group of alike.values()) {
    if (group.length < 2) continue;
    const step = steps.find(
      (d) => new Set(group.map((v) => bare(formatFraction(v, d)))).size === group.length,
    );
    for (const v of group) printed.set(v, step === undefined ? dims.fine(v) : bare(formatFraction(v, step)));
  }
  for (const v of inside) {
    const step = MM_PER_INCH / base;
    const down = Math.floor(v / step + 1e-9) * step;
    if (v > FEW_STEPS * step) printed.set(v, bare(formatFraction(down, base)));
  }
  const known = [...printed.keys()];
  const own = (mm: number) => {
    const at = known.find((v) => Math.abs(v - mm) <= SAME / 2);
    return at === undefined ? null : (printed.get(at) as string);
  };
  return {
    ...dims,
    text: (mm) => own(mm) ?? dims.text(mm),
    error: (mm) => {
      const text = own(mm);
      const read = text === null ? null : parseLength(text, 'in');
      return read?.ok ? tidied(read.mm - mm) : dims.error(mm);
    },
  };
}

const tidied = (error: number): number => (Math.abs(error) < 1e-9 ? 0 : error);

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
    own: same,
    coarse: false,
  };
}
