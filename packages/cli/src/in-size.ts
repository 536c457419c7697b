import { type AnyFamily, JobError, type Problem } from '@tinwright/core';
import { quoted, suggestion } from '@tinwright/core/internal';
import type { Locate } from './open-text.js';
import { readRows } from './sizes/read-rows.js';
import { listedRows } from './sizes/read-table.js';
import { TableError, writtenOver } from './sizes/row.js';

/** What size of a job is meant. */
export const SIZE_OPTION = {
  type: 'string',
  describe: 'a row of sizes: in the job, by its name; the job without its rows when left out',
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
  const { sizes, ...base } = (data ?? {}) as { readonly sizes?: unknown };
  const names: string[] = [];
  // places count rows here: line 0 is the first of the list
  const at: Locate = ([i = 0, key]) => ({ line: Number(i), column: key === undefined ? 0 : 1 });
  try {
    for await (const row of readRows(listedRows(sizes ?? [], at), { data: base, families })) {
      names.push(row.name);
      if (row.name !== size) continue;
      const own = row.cells.reduce((d, { path, value }) => writtenOver(d, path, value), base as unknown);
      return await within(row.line, row.cells, () => compute(own));
    }
  } catch (error) {
    if (!(error instanceof TableError)) throw error;
    throw problem(['sizes', error.place.line], error.message, '');
  }
  return fail(size, names);
}

function fail(size: string, names: readonly string[]): never {
  const fix = names.length === 0 ? 'Give sizes: in the job' : suggestion(size, names);
  throw problem(['sizes'], `there is no size ${quoted(size)}`, fix);
}

const problem = (path: Problem['path'], message: string, fix: string) =>
  new JobError([{ code: 'size-unknown', path, message, fix }]);

/** Problems of values that a row wrote are the row's. */
async function within<T>(
  row: number,
  cells: readonly { readonly path: Problem['path'] }[],
  work: () => T | Promise<T>,
): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    const own = ({ path }: Problem) =>
      cells.some((c) => c.path.every((step, i) => String(step) === String(path[i])));
    throw new JobError(
      error.problems.map((p) =>
        own(p) ? { ...p, path: ['sizes', row], message: `${p.path.at(-1)}: ${p.message}` } : p,
      ),
    );
  }
}
