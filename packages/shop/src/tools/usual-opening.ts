import { cite, type Source } from '@tinwright/core';

/** Openings of a V by the thickness of the sheet. mm */
interface OpeningRow {
  /** Thickest sheet of the row. */
  readonly upTo: number;
  /** Thicknesses. */
  readonly times: number;
}

/**
 * Opening of a V in thicknesses as makers print it: 6 T up to 2.6 mm, 8 T from 3 to 8 mm, 10 T up to 10 (some print 12), 12 T
 * above. Between two rows the thicker one's holds.
 */
export const USUAL_OPENINGS: readonly OpeningRow[] = [
  { upTo: 2.6, times: 6 },
  { upTo: 8, times: 8 },
  { upTo: 10, times: 10 },
  { upTo: Infinity, times: 12 },
];

/** The widest that any row gives for any sheet. */
export const WIDEST: number = Math.max(...USUAL_OPENINGS.map((r) => r.times));

/** Where they come from. */
export const OPENING_SOURCE: Source = cite('makers-tables', { rule: '6T to 12T', basis: 'second-hand' });

/** Usual opening of a V for a sheet, mm. @param thickness mm */
export const usualOpening = (thickness: number): number =>
  (USUAL_OPENINGS.find((r) => thickness <= r.upTo) as OpeningRow).times * thickness;
