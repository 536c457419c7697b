import type { Box, Loop, Point } from '@tinwright/core';
import type { LayerName } from './layers.js';

/**
 * A line, circle, closed loop or text of a drawing. mm, y up. Text runs to the right from its lower left corner,
 * or is centred on `at`; `rotation` in degrees, counter-clockwise.
 */
export type Shape =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number }
  | { readonly kind: 'loop'; readonly loop: Loop }
  | {
      readonly kind: 'text';
      readonly at: Point;
      readonly height: number;
      readonly text: string;
      readonly centred?: boolean;
      readonly rotation?: number;
    };

/** What is drawn on one layer. */
export interface DrawingLayer {
  readonly name: LayerName;
  readonly shapes: readonly Shape[];
}

/**
 * A drawing before it becomes a file: layers in the order they are written, none of them empty.
 * `box` encloses all lines; mm, y up.
 */
export interface Drawing {
  readonly title: string;
  readonly layers: readonly DrawingLayer[];
  readonly box: Box;
}
