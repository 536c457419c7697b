import type { BendTerms } from '../../bending/rule.js';
import type { Frame } from '../../plane/frame.js';
import type { Box, Loop } from '../../plane/loop.js';
import type { Point } from '../../plane/point.js';
import type { EdgeFold, Mark } from '../draft/tree.js';

/** Two points a line runs between. */
export type Line = readonly [Point, Point];

/** A bend on the flat pattern. mm, degrees. */
export interface FlatBend {
  /** Id of the panel that it folds. */
  readonly id: string;
  readonly parent: string;
  /** Bent through, without sign. */
  readonly angle: number;
  readonly direction: 'up' | 'down';
  readonly insideRadius: number;
  readonly terms: BendTerms;
  readonly hem: EdgeFold | null;
  /** Along the middle of the zone, from one end of the bent material to the other. */
  readonly line: Line;
  /** Tangent lines: on the parent, then on the flange; the corners of the bent material. */
  readonly tangents: readonly [Line, Line];
  /** Width of the bent material on the flat: the allowance, of what the metal does where the rule lays out with another. */
  readonly zone: number;
}

/** A flat region of the pattern between tangent lines. */
export interface FlatPanel {
  readonly id: string;
  /** From the panel's frame to the flat. */
  readonly frame: Frame;
  readonly shape: readonly Point[];
}

/** A mark placed on the flat. */
export interface FlatMark extends Mark {
  readonly panel: string;
}

/**
 * The pattern to cut. Origin at the outline's lower left corner, +y up, seen from the marked face; mm.
 * `outline` is closed, simple and counter-clockwise; `holes` lie inside it, counter-clockwise.
 */
export interface FlatPattern {
  readonly thickness: number;
  readonly outline: Loop;
  readonly holes: readonly Loop[];
  readonly bends: readonly FlatBend[];
  readonly marks: readonly FlatMark[];
  /** Lines to scribe only. */
  readonly scribes: readonly Line[];
  readonly panels: readonly FlatPanel[];
  readonly blank: Box;
  /** Net area, mm². */
  readonly area: number;
  /** Length of all cuts, mm. */
  readonly cutLength: number;
}
