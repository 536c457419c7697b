import type { Say } from '@tinwright/core';
import type { Mend, Reason } from '@tinwright/shop';
import type { Language } from '../language.js';
import { englishReason } from './english.js';
import { englishMend } from './english-mend.js';
import { germanReason } from './german.js';
import { germanMend } from './german-mend.js';

const REASONS = { en: englishReason, de: germanReason } as const;
const MENDS = { en: englishMend, de: germanMend } as const;

/** Why a part cannot be bent, in a language. */
export const reasonWords = (reason: Reason, say: Say, language: Language = 'en'): string =>
  REASONS[language](reason, say);

/** Something that would make an impossible part possible, in a language. */
export const mendWords = (mend: Mend, say: Say, language: Language = 'en'): string =>
  MENDS[language](mend, say);
