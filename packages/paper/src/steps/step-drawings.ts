import type { PartPlan } from '@tinwright/core';
import type { Sequence, Shop } from '@tinwright/shop';
import type { Language } from '@tinwright/words';
import type { DimsName } from '@tinwright/words/internal';
import { LANGUAGES } from '@tinwright/words/internal';
import { dimsIn, dimsOf } from '../page/dims.js';
import type { Page } from '../page/page.js';
import { type Typeface, typeface } from '../page/typeface.js';
import { sceneAt } from './scene.js';
import { stepPage } from './step-page.js';

/** How step pictures are set; millimetres and English unless told otherwise. */
export interface StepOptions {
  readonly dims?: DimsName;
  readonly language?: Language;
  readonly face?: Typeface;
}

const HEIGHT = 2.2; // mm, capitals of labels

/**
 * A picture of every operation of an order, in black and white: the part before and after it in the cross-section of
 * the machine, an isometric view of how it lies there, and what to set. Pages of 190 x 129 mm; two fit on a sheet of A4
 * or letter paper. Empty for a part without bends and for one that cannot be bent.
 */
export function stepDrawings(
  part: PartPlan,
  sequence: Sequence,
  shop: Shop,
  { dims = 'mm', language = 'en', face = typeface() }: StepOptions = {},
): readonly Page[] {
  const setting = {
    words: LANGUAGES[language].steps,
    dims: dimsIn(dimsOf(dims), language),
    face,
    height: HEIGHT,
  };
  return sequence.steps.map((_, i) => stepPage(sceneAt(part, sequence, i, shop), setting));
}
