import { type AnyFamily, type JobPlan, refit } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import type { Shop } from '@tinwright/shop';
import type { Host } from '../host/console.js';
import { type ExitCode, refuse } from '../host/failure.js';
import { fromMeasured, readMeasured } from '../line/measured.js';
import { inSize, sizeNamed } from './in-size.js';
import { openJob } from './open-job.js';
import { contextOf, shopAsked } from './open-shop.js';
import { withText } from './open-text.js';

/** What a drawing command is asked about a job. */
export interface MeasuredAsk {
  readonly verb: string;
  readonly job: string;
  readonly shop?: string | undefined;
  readonly size?: string | undefined;
  /** As `JobAsk.others`. */
  readonly others?: string;
  readonly measured: readonly string[];
  readonly json: boolean;
}

/** Read and plan a job as it is, or as it is once what was measured on the bench is known. */
export async function openMeasured(
  host: Host,
  families: readonly AnyFamily[],
  { verb, job, shop: file, size, others, measured: given, json }: MeasuredAsk,
): Promise<{ readonly plan: JobPlan; readonly shop: Shop | null } | { readonly exit: ExitCode }> {
  if (given.length === 0)
    return openJob(host, job, json, families, { shop: file, size, ...(others && { others }) });
  const measured = readMeasured(given);
  if (typeof measured === 'string') return { exit: refuse(host, json, 'usage', verb, measured) };
  const asked = await shopAsked(host, file, json);
  if ('exit' in asked) return asked;
  const { shop } = asked;
  const context = await contextOf(shop);
  const opened = await withText(host, job, 'job', json, (data) =>
    inSize(data, size, families, (own) =>
      fromMeasured(verb, host, json, measured, () =>
        refit(own, { measured, ...context, made: [] }, families, { hardware }),
      ),
    ),
  );
  if ('exit' in opened) return opened;
  const fitted = opened.answer;
  return 'exit' in fitted ? fitted : { plan: sizeNamed(fitted.answer.after, size), shop };
}
