import type { Loop, Point, Segment } from '@tinwright/core';
import type { PieceOrder } from './order.js';

/** How a table cuts. mm. */
export interface CutStyle {
  /** Width of the cut; 0 where the controller compensates by itself. */
  readonly kerf: number;
  readonly lead: 'line' | 'arc' | 'none';
  /** Length of ways in; ways out take a third. Shorter where there is no room. */
  readonly leadLength: number;
  /** Micro-joints an outline keeps, and how much metal each leaves between the ends of the cut. */
  readonly ties: number;
  readonly tieWidth: number;
  /** The nearest piece next where nobody says. */
  readonly order?: PieceOrder;
  /** Shortest stretch of two outlines, a kerf apart, that is cut once for both; each is cut whole where it is left out. */
  readonly commonCuts?: number;
}

/**
 * Ways in of usual length, mm: plasma in thin sheet 3 to 6, laser 1 to 3 (from memory, no table was reached: an
 * estimate). They start in the scrap (cutters' manuals).
 */
export const LEAD_LENGTH: Readonly<Record<'plasma' | 'laser', number>> = Object.freeze({
  plasma: 4,
  laser: 2,
});

/** How a table cuts when nothing else is asked for: lines as ways in, as long as for plasma, no micro-joints; the kerf is left to the controller. */
export const CUT_STYLE: CutStyle = Object.freeze({
  kerf: 0,
  lead: 'line',
  leadLength: LEAD_LENGTH.plasma,
  ties: 0,
  tieWidth: 0.5,
});

/** A cut all the way round, compensated: a hole counter-clockwise, an outline clockwise. */
export interface Contour {
  /** Id of the piece. */
  readonly piece: string;
  readonly kind: 'hole' | 'outline';
  /** Starts where the way in ends. */
  readonly loop: Loop;
  readonly leadIn: Segment | null;
  readonly leadOut: Segment | null;
  /** Where the cut stops and goes on, to keep a micro-joint. */
  readonly ties: readonly (readonly [Point, Point])[];
  /** What is cut of the loop where cuts of neighbours make the rest, in order; all of it where this is left out. */
  readonly runs?: readonly CutRun[];
}

/** A run of cut, open, in the direction of travel. */
export type CutRun = readonly Segment[];
