import type { State } from './state.js';
import { sizeText } from './units.js';

/** What a class is to find. */
export const BLANK = '……';

/** A number with the decimal sign of the page's language. */
export const numberIn = (state: State, text: string): string =>
  state.language.value === 'de' ? text.replace('.', ',') : text;

/** Lengths in the job's unit. */
export const lengths =
  (state: State): ((mm: number) => string) =>
  (mm) =>
    numberIn(state, sizeText(mm, state.job.value?.units ?? 'mm'));

/** Lengths that follow from others: left out where a class is to find them. */
export const found = (state: State): ((mm: number) => string) =>
  state.content.worksheet ? () => BLANK : lengths(state);

/** A text that begins as a sentence does; a path of the job, `endTabs.notch`, stays as it is written. */
export const sentence = (text: string): string =>
  text.replace(
    /^\p{Ll}[\p{Ll}\p{Lm}]*(?=[\s,:;-]|$)/u,
    (word) => word.charAt(0).toUpperCase() + word.slice(1),
  );
