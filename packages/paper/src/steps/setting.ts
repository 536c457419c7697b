import type { StepWords } from '@tinwright/words/internal';
import type { Typeface } from '../page/typeface.js';
import type { Dims } from '../plan/dims.js';

/** What step pictures are set with. */
export interface StepSetting {
  readonly words: StepWords;
  readonly dims: Dims;
  readonly face: Typeface;
  /** Of capitals, mm. */
  readonly height: number;
}
