import type { Line } from '@tinwright/core';

/** An edge of the blank a distance is set from; north is +y, east is +x. */
export type BlankEdge = 'west' | 'east' | 'south' | 'north';

/** What a row of a marking program does with rule, square and scriber. */
export type RowKind = 'parallel' | 'angle' | 'join' | 'circle' | 'punch';

/**
 * One row of a marking program: one setting, and every stroke that is made with it. Flat coordinates, mm, degrees. A
 * point is a stroke of no length; a circle is a stroke from its centre to its rim.
 */
export interface MarkingRow {
  readonly kind: RowKind;
  /** Distance the rule is set to, or the diameter of circles; null where points are joined or an angle is laid on. */
  readonly set: number | null;
  /** Edges of the blank it is measured from; none where points are joined. */
  readonly from: readonly BlankEdge[];
  /** To an edge of the blank, 0 to 90; only of kind angle. */
  readonly angle: number | null;
  readonly strokes: readonly Line[];
  /** What they are for: `bend north`, `notch`, `sight line north`, `hole`, `spot-weld`. */
  readonly for: readonly string[];
}
