import { basename } from 'node:path';
import type { AnyFamily, JobPlan } from '@tinwright/core';
import type { Blank } from '@tinwright/cutting';
import type { ListedPart } from '@tinwright/files/internal';
import type { Shop } from '@tinwright/shop';
import type { Host } from '../host/console.js';
import type { ExitCode } from '../host/failure.js';
import type { OptionSpec } from '../line/command.js';
import { openJob } from '../open/open-job.js';

/** Blanks of several jobs, to be cut together. */
export interface JobBlanks {
  readonly plans: readonly JobPlan[];
  readonly blanks: readonly Blank[];
  readonly parts: readonly ListedPart[];
  readonly shop: Shop | null;
}

/** The option that takes a job's own sizes. */
export const SIZES_OPTION: OptionSpec = {
  type: 'boolean',
  default: false,
  describe: 'every row under sizes: of the jobs together, in place of the jobs without their rows',
};

/** How jobs are opened to be cut together. */
export interface BlanksAsk {
  readonly shop?: string | undefined;
  /** Every row of the jobs' own `sizes:` in place of the jobs as they stand. */
  readonly sizes: boolean;
  readonly json: boolean;
}

/** A job, or one of its sizes, and what it is called beside others. */
interface Named {
  readonly plan: JobPlan;
  readonly name: string;
}

/**
 * Plan the jobs and list their blanks; a part's name that two jobs have gets the file's name before it, numbered where files
 * have one name, or one is given twice; one that two sizes have gets theirs.
 */
export async function openBlanks(
  host: Host,
  files: readonly string[],
  families: readonly AnyFamily[],
  { shop: shopFile, sizes, json }: BlanksAsk,
): Promise<JobBlanks | { readonly exit: ExitCode }> {
  const [{ blankOf }, { listedPart }] = await Promise.all([
    import('@tinwright/cutting'),
    import('@tinwright/files/internal'),
  ]);
  const jobs: Named[] = [];
  let shop: Shop | null = null;
  for (const [i, file] of jobNames(files).entries()) {
    const rows: Named[] = [];
    const each = (plan: JobPlan, name: string) =>
      void rows.push({ plan, name: files.length === 1 ? name : `${file}-${name}` });
    const ask = { shop: shopFile, others: '--sizes takes them all', ...(sizes && { each, most: Infinity }) };
    const opened = await openJob(host, files[i] as string, json, families, ask);
    if ('exit' in opened) return opened;
    jobs.push(...(rows.length > 0 ? stockOnce(rows) : [{ plan: opened.plan, name: file }]));
    shop = opened.shop;
  }
  const names = jobs.flatMap(({ plan }) => plan.parts.map((part) => part.name));
  const named = jobs.flatMap(({ plan, name }) =>
    plan.parts.map((part) => {
      const twice = names.filter((n) => n === part.name).length > 1;
      return { part, name: twice ? `${name}.${part.name}` : part.name };
    }),
  );
  return {
    plans: jobs.map(({ plan }) => plan),
    blanks: named.map(({ part, name }) => ({ ...blankOf(part), part: name })),
    parts: named.map(({ part, name }) => listedPart(part, name)),
    shop,
  };
}

/** Sizes of one job, with the sheets that it brings along once, not once a size. */
function stockOnce(rows: readonly Named[]): readonly Named[] {
  const racks = rows.map(({ plan }) => JSON.stringify(plan.job.rack));
  return rows.map((row, i) =>
    racks.indexOf(racks[i] as string) === i
      ? row
      : { ...row, plan: { ...row.plan, job: { ...row.plan.job, rack: null } } },
  );
}

/** What files are called, each its own: a name that is taken gets a number. */
function jobNames(files: readonly string[]): readonly string[] {
  const names: string[] = [];
  files.forEach((file, i) => {
    const plain = jobName(file, i);
    let own = plain;
    for (let n = 2; names.includes(own); n++) own = `${plain}-${n}`;
    names.push(own);
  });
  return names;
}

const jobName = (file: string, index: number): string =>
  basename(file)
    .replace(/\.[^.]*$/, '')
    .replaceAll(/[^\p{L}\p{N}_-]+/gu, '-') || `job-${index + 1}`;
