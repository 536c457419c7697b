import type { StockSheet } from '../../stock/sheet.js';

/** A rectangle on a sheet: lower left corner and sizes, mm. */
export interface Area {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/**
 * A cut edge to edge and what follows on both sides. `x` is a vertical line at `at`, `y` a horizontal one, in the frame
 * of the sheet; with a kerf, `at` is its lower edge. Null: that side is done.
 */
export interface CutTree {
  readonly axis: 'x' | 'y';
  readonly at: number;
  readonly low: CutTree | null;
  readonly high: CutTree | null;
}

/** A blank where it lies on its sheet. */
export interface PlacedBlank extends Area {
  /** `PART-n` */
  readonly id: string;
  readonly part: string;
  /** Turned by a quarter against the blank's own x and y. */
  readonly turned: boolean;
}

/** One sheet taken from the rack and what becomes of it. */
export interface SheetPlan {
  readonly stock: StockSheet;
  readonly parts: readonly PlacedBlank[];
  readonly cuts: CutTree | null;
  /** What is left and worth keeping, the largest first. */
  readonly offcuts: readonly Area[];
}

/** What a piece is, between cuts and in the end. */
export type PieceName =
  | { readonly kind: 'blank'; readonly id: string }
  | { readonly kind: 'offcut'; readonly sheet: number; readonly number: number }
  | { readonly kind: 'strip'; readonly sheet: number; readonly letter: string }
  | { readonly kind: 'sheet'; readonly sheet: number }
  | { readonly kind: 'scrap' };

/** One stroke of the shear, in the order they are made. */
export interface ShearStep {
  /** Index of the sheet in the plan. */
  readonly sheet: number;
  readonly axis: 'x' | 'y';
  readonly at: number;
  /** The piece that is cut. */
  readonly piece: PieceName;
  readonly area: Area;
  /** Distance of the rear stop, mm; null where it does not reach and the line is marked instead. */
  readonly stop: number | null;
  /** Which side lies behind the blade, against the stop. */
  readonly behind: 'low' | 'high';
  readonly low: PieceName;
  readonly high: PieceName;
}

/** What no sheet was left for. */
export interface Missing {
  readonly part: string;
  readonly count: number;
}

/** All sheets for all blanks of one metal and thickness. */
export interface ShearPlan {
  readonly material: string;
  readonly thickness: number;
  readonly kerf: number;
  readonly sheets: readonly SheetPlan[];
  readonly steps: readonly ShearStep[];
  /** How often the rear stop is set. */
  readonly settings: number;
  readonly missing: readonly Missing[];
  /** Cost of the sheets, and a bound no plan is below; in prices where all sheets have one, else in sheets. */
  readonly cost: number;
  readonly bound: number;
  /** Steps the search took. */
  readonly searched: number;
}
