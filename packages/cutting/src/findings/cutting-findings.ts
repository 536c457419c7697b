import {
  type Finding,
  type FindingsOf,
  type Point,
  type RemarkData,
  remarkOf,
  type Severity,
} from '@tinwright/core';

/** The worst of all places on sheets where a finding on a part holds. */
export interface OnSheet {
  readonly sheet: string;
  readonly piece: string;
  /** On the sheet, mm. */
  readonly on: Point;
  /** How many places there are in all. */
  readonly places: number;
}

/** Why a piece found no room. */
export type LeftWhy = 'too-large' | 'no-metal' | 'stock-short' | 'grain' | 'shear' | 'sheet-long';

/** What would have to be bought: pieces, kg of parts, and the sheet that comes nearest. */
export interface Short {
  readonly count: number;
  readonly kg: number;
  /** Sheets of that kind, by area alone: no plan takes fewer. */
  readonly sheets: number;
  /** Its name and usable size, mm; null where the rack has none of the metal. */
  readonly of: { readonly name: string; readonly x: number; readonly y: number } | null;
  readonly why: LeftWhy;
}

/** What the words of every finding on sheets need besides value and limit, by its code. Lengths mm. */
export interface CuttingFindings {
  /** An edge shorter than the cut is wide. */
  readonly 'edge-under-kerf': OnSheet;
  readonly 'slot-closes': OnSheet;
  readonly 'hole-closes': OnSheet;
  readonly 'lead-short': OnSheet;
  readonly 'lead-none': OnSheet;
  /** Edges that a neighbour's cut makes, so that its slanting side falls on them. */
  readonly 'common-cut': OnSheet;
  /** Fewer micro-joints than asked: they keep off what is cut for two. */
  readonly 'ties-few': OnSheet;
  /** Common cuts were asked for, and there is none. */
  readonly 'common-cut-none': { readonly why: 'kerf' | 'by-hand' | 'edges' };
  readonly 'kerf-zero': object;
  readonly 'left-out': Short;
}

/** A finding on sheets, by its code. */
export type CuttingFinding = FindingsOf<CuttingFindings>;

/** A finding on a part, or on the whole order for null, typed by its code. */
export function cuttingFinding<C extends keyof CuttingFindings & string>(
  code: C,
  severity: Severity,
  part: string | null,
  data: RemarkData<CuttingFindings[C]>,
): Finding<C, CuttingFindings[C] & object> {
  return { ...remarkOf(code, severity, data), part };
}
