import type { Grain, Point, Trim } from '@tinwright/core';
import { frozen } from '@tinwright/core/internal';

export type { Grain, Trim };

/**
 * Stock of one kind: a full sheet as bought, or an offcut kept from an earlier job.
 * Lengths mm, origin at the lower left corner, x to the right, y up.
 */
export interface StockSheet {
  readonly name: string;
  readonly origin: 'sheet' | 'offcut';
  /** Name of a row of the materials table. */
  readonly material: string;
  /** mm */
  readonly thickness: number;
  /** Size along x, mm; of an outline, its extent. */
  readonly x: number;
  /** Size along y, mm; of an outline, its extent. */
  readonly y: number;
  /** An offcut's corners, counter-clockwise, its extent starting at (0, 0); null where it is the whole rectangle. */
  readonly outline: readonly Point[] | null;
  /** How many there are; Infinity where more can be had. */
  readonly count: number;
  /** Price of one, in the shop's money; null where nobody said. */
  readonly price: number | null;
  readonly grain: Grain;
  readonly trim: Trim;
}

/**
 * How offcuts are used: before any sheet, as far as blanks go on them; as if they cost next to nothing, so wherever that
 * saves sheet; or at their price, or that of the cheapest sheet by area.
 */
export type UseOfOffcuts = 'first' | 'free' | 'at-cost';

/** All that may be cut, and how. */
export interface Rack {
  readonly sheets: readonly StockSheet[];
  /** Material lost by one cut, mm; 0 on a shear. */
  readonly kerf: number;
  /** The least offcut worth keeping, mm, either way round. */
  readonly leastOffcut: { readonly x: number; readonly y: number };
  /** How offcuts are used; as if free where nobody says. */
  readonly offcuts?: UseOfOffcuts;
}

/** A trim of nothing. */
export const NO_TRIM: Trim = frozen({ west: 0, east: 0, south: 0, north: 0 });
