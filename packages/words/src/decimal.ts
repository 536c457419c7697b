import type { Say, Unit } from '@tinwright/core';
import { plainNumber, sayIn } from '@tinwright/core/internal';
import type { Language } from './language.js';

const DECIMAL: Readonly<Record<Language, '.' | ','>> = { en: '.', de: ',' };

/** A text whose numbers have a point, with the decimal sign of a language. */
export const inDecimal = (text: string, language: Language): string =>
  DECIMAL[language] === '.' ? text : text.replace(/(\d)\.(\d)/g, `$1${DECIMAL[language]}$2`);

/** To a tenth, as a language writes it. */
export const tenthOf = (value: number, language: Language): string =>
  inDecimal(plainNumber(value, 1), language);

/** Lengths in a unit as a language writes them. */
export function sayOf(unit: Unit, language: Language): Say {
  const { size, most, least } = sayIn(unit);
  return {
    unit,
    size: (mm) => inDecimal(size(mm), language),
    most: (mm) => inDecimal(most(mm), language),
    least: (mm) => inDecimal(least(mm), language),
  };
}
