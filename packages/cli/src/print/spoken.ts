import type { Unit } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { Language } from '@tinwright/words';
import { CONSOLE_WORDS, type ConsoleWords } from '@tinwright/words/internal';
import { sizeText } from './size-text.js';

/** Words of a language for a terminal, and numbers as it writes them. */
export interface Spoken {
  readonly words: ConsoleWords;
  /** `64.2 %` of a share 0 to 1. */
  readonly percent: (share: number) => string;
  /** `432.46 mm`, or `720 x 460 mm`. */
  readonly size: (...sides: readonly number[]) => string;
  /** `4.2 min` */
  readonly minutes: (count: number) => string;
}

export function spoken(language: Language, units: Unit): Spoken {
  const words = CONSOLE_WORDS[language];
  const own = (number: string) => number.replace('.', words.decimal);
  return {
    words,
    percent: (share) => `${own(plainNumber(share * 100, 1))} %`,
    size: (...sides) => `${sides.map((s) => own(sizeText(s, units))).join(' x ')} ${units}`,
    minutes: (count) => `${own(plainNumber(count, 1))} min`,
  };
}
