import { frozen } from '@tinwright/core/internal';
import type { Language } from '@tinwright/words';
import { ENGLISH } from '../plan/english.js';
import { GERMAN } from '../plan/german.js';
import type { PlanWords } from '../plan/words.js';
import { STEPS_ENGLISH } from '../steps/english.js';
import { STEPS_GERMAN } from '../steps/german.js';
import type { StepWords } from '../steps/words.js';
import { ENGLISH_PACKET } from './english.js';
import { GERMAN_PACKET } from './german.js';
import type { PacketWords } from './words.js';

/** All words of a packet, by language. A new one is its two files and a line here. */
export const LANGUAGES: Readonly<
  Record<Language, { readonly plans: PlanWords; readonly packet: PacketWords; readonly steps: StepWords }>
> = frozen({
  en: { plans: ENGLISH, packet: ENGLISH_PACKET, steps: STEPS_ENGLISH },
  de: { plans: GERMAN, packet: GERMAN_PACKET, steps: STEPS_GERMAN },
});
