import { type AnyFamily, type JobPlan, planJob, readJob } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { safeText } from '@tinwright/core/internal';
import type { Shop } from '@tinwright/shop';
import type { Host } from '../host/console.js';
import type { ExitCode } from '../host/failure.js';
import { inRow, inSize, sizedJobs, sizeNamed } from './in-size.js';
import { contextOf, shopAsked } from './open-shop.js';
import { withText } from './open-text.js';

/** What of a job is wanted, and in which shop. */
export interface JobAsk {
  readonly shop?: string | undefined;
  /** A row of its own sizes. */
  readonly size?: string | undefined;
  /** Called with the job as each of its own sizes has it, where none is asked for; the first `most` of them. */
  readonly each?: (plan: JobPlan, name: string) => void | Promise<void>;
  /** `MOST_TRIED` when left out. */
  readonly most?: number;
  /** Told where its own sizes are left out: how to ask for them; null where nothing is told. */
  readonly others?: string | null;
}

/** Sizes of a job that are planned when it is looked at; the others are read. */
export const MOST_TRIED = 100;

/**
 * Read and plan the job in a file or from standard input, with the test strips of a shop file where one is asked for;
 * problems are printed with their places.
 */
export async function openJob(
  host: Host,
  file: string,
  json: boolean,
  families: readonly AnyFamily[],
  { shop: shopFile, size, each, most = MOST_TRIED, others = '--size NAME takes one' }: JobAsk = {},
): Promise<{ readonly plan: JobPlan; readonly shop: Shop | null } | { readonly exit: ExitCode }> {
  const asked = await shopAsked(host, shopFile, json);
  if ('exit' in asked) return asked;
  const { shop } = asked;
  const opened = await withText(host, file, 'job', json, async (data) => {
    const context = await contextOf(shop);
    const planned = (own: unknown) => planJob(readJob(own, families, { ...context, hardware }));
    const plan = await inSize(data, size, families, planned);
    await refuseStock(plan);
    if (size !== undefined) return plan;
    if (each === undefined) {
      if (!json && others !== null && hasSizes(data))
        host.err(`${safeText(file)}: its rows under sizes: are left out; ${others}.\n`);
      return plan;
    }
    for await (const { row, job } of sizedJobs(data, families))
      if (row.number <= most)
        await each(
          await inRow(
            row,
            () => planned(job),
            () => plan,
          ),
          row.name,
        );
    return plan;
  });
  return 'exit' in opened ? opened : { plan: sizeNamed(opened.answer, size), shop };
}

/** Whether a job that was read has sizes of its own. */
function hasSizes(data: unknown): boolean {
  const { sizes } = data as { readonly sizes?: unknown };
  return Array.isArray(sizes) && sizes.length > 0;
}

/** Sheets and offcuts of a job that cannot be. @throws JobError with their places in the job */
async function refuseStock({ job: { rack, units } }: JobPlan): Promise<void> {
  if (rack === null) return;
  const { rackOf } = await import('@tinwright/cutting/internal');
  rackOf(rack, units, ['stock']);
}
