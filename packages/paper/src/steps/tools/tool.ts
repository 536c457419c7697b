import type { Point } from '@tinwright/core';
import type { DrawnTool } from '@tinwright/words/internal';

/**
 * A piece of a machine as it is seen along the bend line: x to the operator, z up, in the frame of `StepState`. mm.
 * The outline is closed and counter-clockwise.
 */
export interface Tool {
  readonly name: DrawnTool;
  readonly outline: readonly Point[];
  /** Stands only where tools are mounted along the line; else it is as long as the machine. */
  readonly mounted: boolean;
}

/** A machine before and after an operation. */
export interface Machine {
  readonly before: readonly Tool[];
  readonly after: readonly Tool[];
}

/** A rectangle by its least and greatest corner. */
export const rectangle = (x0: number, z0: number, x1: number, z1: number): readonly Point[] => [
  [x0, z0],
  [x1, z0],
  [x1, z1],
  [x0, z1],
];

/** An outline turned about the line. @param turn radians */
export const turned = (outline: readonly Point[], turn: number): readonly Point[] =>
  outline.map(
    ([x, z]): Point => [x * Math.cos(turn) - z * Math.sin(turn), x * Math.sin(turn) + z * Math.cos(turn)],
  );
