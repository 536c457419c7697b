import type { JobPlan, PartPlan } from '@tinwright/core';
import type { OutFile } from '@tinwright/files';
import type { Sequence, Shop, ShopPlan } from '@tinwright/shop';
import { type StepOptions, stepDrawings } from './steps/step-drawings.js';
import { pageSvg } from './svg/page.js';

/** Step pictures of a part's order as SVG: `steps/<part>-01.svg` and so on. */
export function stepFiles(
  part: PartPlan,
  sequence: Sequence,
  shop: Shop,
  options: StepOptions = {},
): readonly OutFile[] {
  const { language = 'en' } = options;
  const pages = stepDrawings(part, sequence, shop, options);
  const digits = Math.max(2, String(pages.length).length);
  return pages.map((page, i) => ({
    path: `steps/${part.name}-${String(i + 1).padStart(digits, '0')}.svg`,
    content: pageSvg(page, language),
  }));
}

/** How the step pictures of a job are set. */
export interface JobStepOptions extends Pick<StepOptions, 'language'> {
  /** Hears how many parts are done, of how many. */
  readonly onProgress?: (done: number, of: number) => void;
}

/** Step pictures of every part that can be bent, in the unit of the job. */
export function jobStepFiles(
  { job, parts }: JobPlan,
  { sequences, shop }: ShopPlan,
  { language = 'en', onProgress }: JobStepOptions = {},
): readonly OutFile[] {
  return parts.flatMap((p, i) => {
    const files = stepFiles(p, sequences[i] as Sequence, shop, { dims: job.units, language });
    onProgress?.(i + 1, parts.length);
    return files;
  });
}
