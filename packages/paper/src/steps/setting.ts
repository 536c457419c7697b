import type { StepWords } from '@tinwright/words/internal';
import type { Dims } from '../page/dims.js';
import type { Typeface } from '../page/typeface.js';

/** What step pictures are set with. */
export interface StepSetting {
  readonly words: StepWords;
  readonly dims: Dims;
  readonly face: Typeface;
  /** Of capitals, mm. */
  readonly height: number;
}
