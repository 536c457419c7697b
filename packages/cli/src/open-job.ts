import { type AnyFamily, type JobPlan, planJob, readJob } from '@tinwright/core';
import type { Host } from './console.js';
import type { ExitCode } from './failure.js';
import { withText } from './open-text.js';

/** Read and plan the job in a file or from standard input; problems are printed with their places. */
export async function openJob(
  host: Host,
  file: string,
  json: boolean,
  families: readonly AnyFamily[],
): Promise<{ readonly plan: JobPlan } | { readonly exit: ExitCode }> {
  const opened = await withText(host, file, 'job', json, (data) => planJob(readJob(data, families)));
  return 'exit' in opened ? opened : { plan: opened.answer };
}
