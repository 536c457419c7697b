import type { JobPlan } from '@tinwright/core';
import { quoted } from '@tinwright/core/internal';
import { WriteError } from '../host/failure.js';
import type { OwnList, OwnLists } from './own-lists.js';

/** Lists of sets that are of one job, by the name it has; those of a strip, a nest, shearing are of several or of none. */
const OF_A_JOB: readonly string[] = ['job.json', 'packet.json', 'plans.json', 'templates.json'];

/** What is written where: a list replaced whole, or one of which parts stay. */
export interface WrittenWhere {
  readonly out: string;
  readonly list: string;
  readonly of: 'all parts' | 'some parts';
}

/**
 * A folder holds files of one job: what a command writes lies beside what it leaves there, and somebody takes both to
 * the bench. A set that is replaced whole leaves nothing.
 * @throws WriteError that names the other job, or a part that this one does not have
 */
export function refuseOtherJob(written: WrittenWhere, standing: OwnLists, plan: JobAndParts): void {
  const found = otherJobIn(written, standing, plan);
  if (found !== null)
    throw new WriteError(
      written.out,
      `holds ${found}. Choose another folder with --out, or take those files away. Nothing was changed`,
    );
}

type JobAndParts = Pick<JobPlan, 'job' | 'parts'>;

/** The list of another job that would stay beside what is written, with what shows it; null where there is none. */
export function otherJobIn(
  { list, of }: WrittenWhere,
  standing: OwnLists,
  { job, parts }: JobAndParts,
): string | null {
  const stays = OF_A_JOB.filter((name) => name !== list || of === 'some parts');
  for (const name of stays) {
    const found = standing.get(name);
    const sign = found === undefined ? null : signOfOther(found, { job, parts }, name === list);
    if (sign !== null) return `${name} of another job or size, ${sign}`;
  }
  return null;
}

/**
 * What shows that a list is of another job; null where nothing does. Where a name is missing a list is another job's
 * that has no part of this one; one that is joined may have no part besides.
 */
function signOfOther({ data }: OwnList, { job, parts }: JobAndParts, joined: boolean): string | null {
  const name = typeof data.name === 'string' ? data.name : '';
  const named = name !== '' && job.name !== '';
  if (named && name !== job.name) return quoted(name);
  if (named && !joined) return null;
  const theirs = partNames(data);
  const strays = theirs.filter((p) => !parts.some((own) => own.name === p));
  const [stray] = joined || strays.length === theirs.length ? strays : [];
  return stray === undefined ? null : `with a part ${quoted(stray)}`;
}

const partNames = ({ parts }: OwnList['data']): readonly string[] =>
  Array.isArray(parts) ? parts.map((p: { readonly name?: unknown }) => String(p.name)) : [];
