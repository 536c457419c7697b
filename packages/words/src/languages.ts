import { frozen } from '@tinwright/core/internal';
import { CONSOLE_ENGLISH } from './console/english.js';
import { CONSOLE_GERMAN } from './console/german.js';
import type { ConsoleWords } from './console/words.js';
import type { Language } from './language.js';
import { ENGLISH_PACKET } from './packet/english.js';
import { GERMAN_PACKET } from './packet/german.js';
import type { PacketWords } from './packet/words.js';
import { ENGLISH } from './plan/english.js';
import { GERMAN } from './plan/german.js';
import type { PlanWords } from './plan/words.js';
import { SHEAR_ENGLISH } from './shear/english.js';
import { SHEAR_GERMAN } from './shear/german.js';
import type { ShearWords } from './shear/words.js';
import { STEPS_ENGLISH } from './steps/english.js';
import { STEPS_GERMAN } from './steps/german.js';
import type { StepWords } from './steps/words.js';

/** What is said on paper in a language. */
export interface PaperWords {
  readonly plans: PlanWords;
  readonly packet: PacketWords;
  readonly steps: StepWords;
  readonly shear: ShearWords;
}

/** All words on paper, by language. A new one is its files and a line here. */
export const LANGUAGES: Readonly<Record<Language, PaperWords>> = frozen({
  en: { plans: ENGLISH, packet: ENGLISH_PACKET, steps: STEPS_ENGLISH, shear: SHEAR_ENGLISH },
  de: { plans: GERMAN, packet: GERMAN_PACKET, steps: STEPS_GERMAN, shear: SHEAR_GERMAN },
});

/** What a terminal says of planned sheets, by language. */
export const CONSOLE_WORDS: Readonly<Record<Language, ConsoleWords>> = frozen({
  en: CONSOLE_ENGLISH,
  de: CONSOLE_GERMAN,
});
