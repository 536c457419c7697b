import { type AnyFamily, type JobPlan, planJob, readJob } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import type { Shop } from '@tinwright/shop';
import type { Host } from './console.js';
import type { ExitCode } from './failure.js';
import { inSize } from './in-size.js';
import { contextOf, shopAsked } from './open-shop.js';
import { withText } from './open-text.js';

/** What of a job is wanted, and in which shop. */
export interface JobAsk {
  readonly shop?: string | undefined;
  /** A row of its own sizes. */
  readonly size?: string | undefined;
}

/**
 * Read and plan the job in a file or from standard input, with the test strips of a shop file where one is asked for;
 * problems are printed with their places.
 */
export async function openJob(
  host: Host,
  file: string,
  json: boolean,
  families: readonly AnyFamily[],
  { shop: shopFile, size }: JobAsk = {},
): Promise<{ readonly plan: JobPlan; readonly shop: Shop | null } | { readonly exit: ExitCode }> {
  const asked = await shopAsked(host, shopFile, json);
  if ('exit' in asked) return asked;
  const { shop } = asked;
  const opened = await withText(host, file, 'job', json, async (data) => {
    const context = await contextOf(shop);
    const plan = await inSize(data, size, families, (own) =>
      planJob(readJob(own, families, { ...context, hardware })),
    );
    await refuseStock(plan);
    return plan;
  });
  return 'exit' in opened ? opened : { plan: opened.answer, shop };
}

/** Sheets and offcuts of a job that cannot be. @throws JobError with their places in the job */
async function refuseStock({ job: { rack, units } }: JobPlan): Promise<void> {
  if (rack === null) return;
  const { rackOf } = await import('@tinwright/cutting/internal');
  rackOf(rack, units, ['stock']);
}
