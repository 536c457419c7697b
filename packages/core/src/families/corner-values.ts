import { value as v } from '../schema/value.js';
import { CORNER_GAP } from './limits.js';

/** What is kept between neighbours at a corner. @param words which, where they are not walls */
export const cornerGap = (words: string = 'kept between neighbours at the corners') =>
  v.or(v.size(words, { min: 0, max: 20 }), CORNER_GAP);

/** Corners of a box: left open, or closed by tabs. */
export const boxCorner = (usual: 'open' | 'tabbed') =>
  v.or(
    v.word('open (square notch) or tabbed (tabs of the north and south walls behind the other two)', [
      'open',
      'tabbed',
    ]),
    usual,
  );

/** Corner tabs. @param corners which corners have them @param usual their length, mm */
export const tabGroup = (corners: string, usual: number) =>
  v.or(v.group(`corner tabs of ${corners}`, { length: v.size('outside length of the corner tabs') }), {
    length: usual,
  });

/** What an automatic nip keeps to the bend it clears, mm. Common practice, no source. */
export const NIP_CLEARANCE = 0.3;
/** What has to be left of an edge between two nips, mm. */
export const LEAST_EDGE = 0.5;

/** How far lower corners are cut back to clear a bend. @param words what is cut, and what `auto` clears */
export const nipValue = (words: string) => v.or(v.sizeOr(words, 'auto', { min: 0 }), 'auto');
