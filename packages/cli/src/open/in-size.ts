import { type AnyFamily, JobError, type JobPlan, type Problem, problemText } from '@tinwright/core';
import { quoted, suggestion } from '@tinwright/core/internal';
import { readRows } from '../table/read-rows.js';
import { listedRows } from '../table/read-table.js';
import { type Row, TableError, writtenOver } from '../table/row.js';
import type { Locate } from './open-text.js';

/** What size of a job is meant. */
export const SIZE_OPTION = {
  type: 'string',
  describe: 'a row under sizes: in the job, by its name; when left out, the job without its rows',
} as const;

/**
 * Compute with the job as one of its own `sizes:` has it; as it stands where none is asked for.
 * @throws JobError for a name that no row has, and for a row that cannot be, at the row's place
 */
export async function inSize<T>(
  data: unknown,
  size: string | undefined,
  families: readonly AnyFamily[],
  compute: (data: unknown) => T | Promise<T>,
): Promise<T> {
  if (size === undefined) return compute(data);
  const names: string[] = [];
  for await (const { row, job } of sizedJobs(data, families)) {
    names.push(row.name);
    if (row.name === size)
      return inRow(
        row,
        () => compute(job),
        () => compute(data),
      );
  }
  return fail(size, names);
}

/** The plan of a size, which says on everything printed whose it is. */
export const sizeNamed = (plan: JobPlan, size: string | undefined): JobPlan =>
  size === undefined
    ? plan
    : { ...plan, job: { ...plan.job, name: [plan.job.name, size].filter((n) => n !== '').join(', ') } };

/** A row of a job's own `sizes:`, and the job as it has it. */
export interface SizedJob {
  readonly row: Row;
  readonly job: unknown;
}

/** The job as each of its own `sizes:` has it. @throws JobError for rows that cannot be read, at the row's place */
export async function* sizedJobs(data: unknown, families: readonly AnyFamily[]): AsyncGenerator<SizedJob> {
  const { sizes, ...base } = (data ?? {}) as { readonly sizes?: unknown };
  // places count rows here: line 0 is the first of the list
  const at: Locate = ([i = 0, key]) => ({ line: Number(i), column: key === undefined ? 0 : 1 });
  try {
    for await (const row of readRows(listedRows(sizes ?? [], at), { data: base, families })) {
      yield {
        row,
        job: row.cells.reduce((d, { path, value }) => writtenOver(d, path, value), base as unknown),
      };
    }
  } catch (error) {
    if (!(error instanceof TableError)) throw error;
    throw problem(['sizes', error.place.line], error.message, '');
  }
}

function fail(size: string, names: readonly string[]): never {
  const fix = names.length === 0 ? 'Give sizes: in the job' : suggestion(size, names);
  throw problem(['sizes'], `there is no size ${quoted(size)}`, fix);
}

const problem = (path: Problem['path'], message: string, fix: string) =>
  new JobError([{ code: 'size-unknown', path, message, fix }]);

/** Compute with a row's job: problems that the job alone does not have are the row's. */
export async function inRow<T>(
  { line, cells, refused }: Row,
  work: () => T | Promise<T>,
  alone: () => unknown,
): Promise<T> {
  if (refused !== undefined) throw problem(['sizes', line], refused, '');
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    const before = await problemsOf(alone);
    const wrote = ({ path }: Problem) =>
      cells.some((c) => c.path.every((step, i) => String(step) === String(path[i])));
    throw new JobError(
      error.problems.map((p) => {
        if (wrote(p)) return { ...p, path: ['sizes', line], message: `${p.path.at(-1)}: ${p.message}` };
        if (before.includes(problemText(p))) return p;
        const { part: _, ...rest } = p;
        return { ...rest, path: ['sizes', line], message: problemText({ ...p, fix: '' }).replace(/\.$/, '') };
      }),
    );
  }
}

/** What a job is refused for, told; nothing where it is not. */
async function problemsOf(work: () => unknown): Promise<readonly string[]> {
  try {
    await work();
    return [];
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    return error.problems.map(problemText);
  }
}
