import { createHash } from 'node:crypto';
import { createReadStream, createWriteStream, type WriteStream } from 'node:fs';
import { appendFile, rename, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { parse } from 'csv-parse';
import { stringify } from 'csv-stringify/sync';
import type { Made } from './make-size.js';
import type { Row } from './row.js';

/** Columns of `sizes.csv`. */
export const COLUMNS = ['name', 'status', 'hash', 'findings', 'message', 'blanks', 'mass', 'files'] as const;

/** A line of `sizes.csv` by its columns. */
export type Line = Readonly<Record<(typeof COLUMNS)[number], string>>;

/** What was made before, by name. */
export type Known = ReadonlyMap<string, Line>;

/** Lines are written as sizes are made, in the order of the table; the file appears when all are there. */
export interface Journal {
  readonly write: (line: Line) => void;
  /** The whole table is through: its file appears. */
  readonly finish: () => Promise<void>;
  /** The run is cut short: what was made is remembered for the next one. */
  readonly leave: () => Promise<void>;
}

const written = (line: readonly string[]) => stringify([line as string[]], { escape_formulas: true });

/** The name of the file of a shard, or of all. */
export const csvName = (shard: Shard | null): string =>
  shard === null ? 'sizes.csv' : `sizes-${shard.index}-of-${shard.count}.csv`;

/** One of several runs that share the rows of a table. */
export interface Shard {
  readonly index: number;
  readonly count: number;
}

const parts = (out: string, name: string) => ({
  whole: join(out, name),
  begun: join(out, `.${name}.begun`),
  before: join(out, `.${name}.before`),
});

/** What earlier runs made, also those that were cut off. */
export async function knownSizes(out: string, name: string): Promise<Known> {
  const { whole, begun, before } = parts(out, name);
  const known = new Map<string, Line>();
  for (const path of [whole, before, begun])
    for await (const line of linesOf(path)) if (line.status === 'made') known.set(line.name, line);
  const lines: string[] = []; // whole ones only: the last may be cut off within its quotes
  for await (const line of linesOf(begun)) lines.push(written(COLUMNS.map((c) => line[c])));
  await appendFile(before, lines.join(''));
  return known;
}

/** Lines of a file of ours; a last one that was cut off is passed over. None where there is no file. */
export async function* linesOf(path: string): AsyncGenerator<Line> {
  if ((await stat(path).catch(() => null)) === null) return;
  const rows = createReadStream(path).pipe(
    parse({ relax_column_count: true, skip_records_with_error: true, skip_empty_lines: true }),
  );
  for await (const row of rows as AsyncIterable<readonly string[]>)
    if (row.length === COLUMNS.length && row[0] !== 'name')
      yield Object.fromEntries(COLUMNS.map((c, i) => [c, row[i] ?? ''])) as unknown as Line;
}

export function openJournal(out: string, name: string): Journal {
  const { whole, begun, before } = parts(out, name);
  const stream = createWriteStream(begun);
  stream.write(written(COLUMNS));
  return {
    write: (line) => void stream.write(written(COLUMNS.map((c) => line[c]))),
    finish: async () => {
      await closed(stream);
      await rename(begun, whole);
      await rm(before, { force: true });
    },
    leave: () => closed(stream),
  };
}

const closed = (stream: WriteStream) =>
  new Promise<void>((done, failed) => {
    stream.on('error', failed);
    stream.end(done);
  });

/** A result as a line. */
export const lineOf = (made: Made, hash: string): Line => ({
  name: made.name,
  status: made.status,
  hash,
  findings: String(made.findings),
  message: made.message,
  blanks: made.blanks,
  mass: made.mass,
  files: String(made.files),
});

/** Tells by its content whether a size is the same as before: 16 hexadecimal digits. */
export function rowHash(salt: string, row: Row): string {
  const values = row.cells.map(({ path, value }) => [path, value]);
  return createHash('sha256')
    .update(`${salt}\n${JSON.stringify(values)}`)
    .digest('hex')
    .slice(0, 16);
}
