import type { Unit } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { Language } from '@tinwright/words';
import { CONSOLE_WORDS, type ConsoleWords, inDecimal } from '@tinwright/words/internal';
import { sizeText } from './size-text.js';

/** Words of a language for a terminal, and numbers as it writes them. */
export interface Spoken {
  readonly words: ConsoleWords;
  /** A text with numbers as it writes them. */
  readonly own: (text: string) => string;
  /** `64.2 %` of a share 0 to 1. */
  readonly percent: (share: number) => string;
  /** `432.46 mm`, or `720 x 460 mm`. */
  readonly size: (...sides: readonly number[]) => string;
  /** `4.2 min` */
  readonly minutes: (count: number) => string;
}

export function spoken(language: Language, units: Unit): Spoken {
  const own = (text: string) => inDecimal(text, language);
  return {
    words: CONSOLE_WORDS[language],
    own,
    percent: (share) => `${own(plainNumber(share * 100, 1))} %`,
    size: (...sides) => `${sides.map((s) => own(sizeText(s, units))).join(' x ')} ${units}`,
    minutes: (count) => `${own(plainNumber(count, 1))} min`,
  };
}
