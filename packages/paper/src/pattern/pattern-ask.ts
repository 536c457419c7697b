import type { FlatPattern, Point } from '@tinwright/core';
import type { PlanWords } from '@tinwright/words/internal';
import type { Dims } from '../page/dims.js';
import type { Typeface } from '../page/typeface.js';
import type { Features } from './features.js';
import type { Ordinate } from './ordinates.js';

/** What a pattern is drawn with. */
export interface PatternAsk {
  readonly name: string;
  readonly flat: FlatPattern;
  readonly features: Features;
  readonly ordinates: readonly Ordinate[];
  readonly sights: readonly SightLine[];
  readonly dims: Dims;
  readonly words: PlanWords;
  readonly face: Typeface;
  readonly height: number;
}

/** A line to set under the nose of a leaf brake, on the flat. mm */
export interface SightLine {
  readonly bend: string;
  readonly line: readonly [Point, Point];
}
