import { basename } from 'node:path';
import type { AnyFamily, JobPlan } from '@tinwright/core';
import type { Blank } from '@tinwright/cutting';
import type { ListedPart } from '@tinwright/files/internal';
import type { Shop } from '@tinwright/shop';
import type { Host } from '../host/console.js';
import type { ExitCode } from '../host/failure.js';
import { openJob } from '../open/open-job.js';

/** Blanks of several jobs, to be cut together. */
export interface JobBlanks {
  readonly plans: readonly JobPlan[];
  readonly blanks: readonly Blank[];
  readonly parts: readonly ListedPart[];
  readonly shop: Shop | null;
}

/**
 * Plan the jobs and list their blanks; a part's name that two jobs have gets the file's name before it, numbered where files
 * have one name, or one is given twice.
 */
export async function openBlanks(
  host: Host,
  files: readonly string[],
  json: boolean,
  families: readonly AnyFamily[],
  shopFile: string | undefined,
): Promise<JobBlanks | { readonly exit: ExitCode }> {
  const [{ blankOf }, { listedPart }] = await Promise.all([
    import('@tinwright/cutting'),
    import('@tinwright/files/internal'),
  ]);
  const plans: JobPlan[] = [];
  let shop: Shop | null = null;
  for (const file of files) {
    const opened = await openJob(host, file, json, families, { shop: shopFile });
    if ('exit' in opened) return opened;
    plans.push(opened.plan);
    shop = opened.shop;
  }
  const names = plans.flatMap((p) => p.parts.map((part) => part.name));
  const jobs = jobNames(files);
  const named = plans.flatMap((p, job) =>
    p.parts.map((part) => {
      const twice = names.filter((n) => n === part.name).length > 1;
      return { part, name: twice ? `${jobs[job]}.${part.name}` : part.name };
    }),
  );
  return {
    plans,
    blanks: named.map(({ part, name }) => ({ ...blankOf(part), part: name })),
    parts: named.map(({ part, name }) => listedPart(part, name)),
    shop,
  };
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
