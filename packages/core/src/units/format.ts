import { MM_PER_INCH, type Unit } from './length.js';

/**
 * A number with at most `digits` decimals, no trailing zeros, no exponent (below 1e21) and no minus zero.
 * Halves round away from zero, also where binary holds them a hair short.
 */
export function plainNumber(value: number, digits: number): string {
  const text = (value * (1 + 4 * Number.EPSILON)).toFixed(digits);
  const short = text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
  return short === '-0' ? '0' : short;
}

const MOST_DIGITS = 12;

/**
 * A length somebody gave: two decimals of a millimetre, four of an inch, and as many more as it takes to look different
 * from every text in `others`, and from nothing where it is not nothing.
 */
export function formatApart(mm: number, others: readonly string[], unit: Unit): string {
  const [value, least] = unit === 'mm' ? [mm, 2] : [mm / MM_PER_INCH, 4];
  const taken = value === 0 ? others : [...others, `0 ${unit}`];
  for (let digits = least; digits <= MOST_DIGITS; digits++) {
    const text = `${plainNumber(value, digits)} ${unit}`;
    if (!taken.includes(text)) return text;
  }
  return `${value} ${unit}`;
}
