import { type AnyFamily, type Job, JobError, type JobPlan, planJob, readJob } from '@tinwright/core';
import type { Shop } from '@tinwright/shop';
import type { Host } from './console.js';
import type { ExitCode } from './failure.js';
import { withMends } from './mend.js';
import { shopAsked } from './open-shop.js';
import { withText } from './open-text.js';

/**
 * Read and plan the job in a file or from standard input, with the test strips of a shop file where one is asked for;
 * problems are printed with their places.
 */
export async function openJob(
  host: Host,
  file: string,
  json: boolean,
  families: readonly AnyFamily[],
  shopFile?: string,
): Promise<{ readonly plan: JobPlan; readonly shop: Shop | null } | { readonly exit: ExitCode }> {
  const asked = await shopAsked(host, shopFile, json);
  if ('exit' in asked) return asked;
  const { shop } = asked;
  const opened = await withText(host, file, 'job', json, (data) =>
    planned(readJob(data, families, { strips: shop?.strips ?? [] })),
  );
  return 'exit' in opened ? opened : { plan: opened.answer, shop };
}

/** The plan of a job. @throws JobError that names, where building a part failed, the nearest size that would work */
function planned(job: Job): JobPlan {
  try {
    return planJob(job);
  } catch (error) {
    throw error instanceof JobError ? withMends(job, error) : error;
  }
}
