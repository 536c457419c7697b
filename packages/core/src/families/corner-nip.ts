import { value as v } from '../schema/value.js';

/** What an automatic nip keeps to the bend it clears, mm. Common practice, no source. */
export const NIP_CLEARANCE = 0.3;
/** What has to be left of an edge between two nips, mm. */
export const LEAST_EDGE = 0.5;

/** How far lower corners are cut back to clear a bend. @param words what is cut, and what `auto` clears */
export const nipValue = (words: string) => v.or(v.sizeOr(words, 'auto', { min: 0 }), 'auto');
