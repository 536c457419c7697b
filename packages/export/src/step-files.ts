import type { PartPlan } from '@tinwright/core';
import type { Sequence, Shop } from '@tinwright/shop';
import type { OutFile } from './out-file.js';
import { STEPS_ENGLISH } from './steps/english.js';
import { type StepOptions, stepDrawings } from './steps/step-drawings.js';
import { pageSvg } from './svg/page.js';

/** Step pictures of a part's order as SVG: `steps/<part>-01.svg` and so on. */
export function stepFiles(
  part: PartPlan,
  sequence: Sequence,
  shop: Shop,
  options: StepOptions = {},
): readonly OutFile[] {
  const { language } = options.words ?? STEPS_ENGLISH;
  const pages = stepDrawings(part, sequence, shop, options);
  const digits = Math.max(2, String(pages.length).length);
  return pages.map((page, i) => ({
    path: `steps/${part.name}-${String(i + 1).padStart(digits, '0')}.svg`,
    content: pageSvg(page, language),
  }));
}
