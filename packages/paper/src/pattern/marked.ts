import type { FlatBend, Point } from '@tinwright/core';
import type { PatternAsk } from './pattern-ask.js';

/** What is marked along a line, at points on it, or between two points. */
export type MarkedThing =
  | { readonly kind: 'cut' }
  | { readonly kind: 'bend'; readonly numbers: readonly string[]; readonly bend: FlatBend }
  | { readonly kind: 'sight'; readonly number: string }
  | { readonly kind: 'hole'; readonly diameter: number; readonly purpose: string | null }
  | { readonly kind: 'mark'; readonly purpose: string };

/**
 * One thing to scribe. `edge`: the datum edge it is measured from, left or bottom, and `offset` from it; `reach`: from
 * and to, or points, from the other datum edge. A slanted line has its two ends, a relief its centre, arcs of
 * one radius theirs. mm of the pattern
 */
export type Marking =
  | {
      readonly kind: 'line';
      readonly edge: 'left' | 'bottom';
      readonly offset: number;
      readonly reach: readonly (readonly [number, number])[];
      readonly thing: MarkedThing;
    }
  | {
      readonly kind: 'points';
      readonly edge: 'left' | 'bottom';
      readonly offset: number;
      readonly at: readonly number[];
      readonly thing: MarkedThing;
    }
  | { readonly kind: 'slant'; readonly from: Point; readonly to: Point; readonly thing: MarkedThing }
  | { readonly kind: 'round'; readonly at: Point; readonly diameter: number }
  | { readonly kind: 'arc'; readonly at: readonly Point[]; readonly radius: number };

/** What of a pattern is asked for to tell its markings. */
export type MarkingAsk = Pick<PatternAsk, 'flat' | 'features' | 'sights'>;

/** Values within it are one; rounding, mm. */
export const SAME = 1e-6;
