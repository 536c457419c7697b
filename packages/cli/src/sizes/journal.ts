import { createReadStream } from 'node:fs';
import { type FileHandle, open, rename, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { pipeline } from 'node:stream';
import { parse } from 'csv-parse';
import { parse as parseNow } from 'csv-parse/sync';
import { stringify } from 'csv-stringify/sync';
import { textTable } from '../table/text-table.js';
import type { Made } from './make-size.js';

/** Columns of `sizes.csv`. */
export const COLUMNS = [
  'name',
  'status',
  'hash',
  'findings',
  'message',
  'blanks',
  'mass',
  'files',
  'sheets',
  'price',
  'contents',
] as const;

/** A line of `sizes.csv` by its columns. */
export type JournalLine = Readonly<Record<(typeof COLUMNS)[number], string>>;

/** What was made before, by name. */
export interface Known {
  readonly get: (name: string) => Promise<JournalLine | undefined>;
  readonly close: () => Promise<void>;
}

/** Lines are written as sizes are made, in the order of the table; the file appears when all are there. */
export interface Journal {
  readonly write: (line: JournalLine) => Promise<void>;
  /** The whole table is through: its file appears. */
  readonly finish: () => Promise<void>;
  /** The run is over, whole or not: what was made is remembered for the next one. */
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

/** What earlier runs made, also those that were cut off. Lines stay in their files and are read when they are asked for. */
export async function knownSizes(out: string, name: string): Promise<Known> {
  const { whole, begun, before } = parts(out, name);
  const kept = await growing(before, 'a');
  try {
    for await (const line of linesOf(begun)) await kept.add(line); // whole ones only: the last may be cut off
  } finally {
    await kept.close();
  }
  const places = textTable();
  const files: FileHandle[] = [];
  for (const path of [whole, before]) {
    const file = await open(path).catch(() => null);
    if (file === null) continue;
    for await (const { line, at, length } of placedLines(path))
      if (line.status === 'made') places.set(line.name, [at * FILES + files.length, length]);
    files.push(file);
  }
  return {
    get: async (wanted) => {
      const [place, length] = places.get(wanted) ?? [];
      if (place === undefined || length === undefined) return undefined;
      const file = files[place % FILES] as FileHandle;
      const { buffer } = await file.read(Buffer.alloc(length), 0, length, Math.floor(place / FILES));
      const [line] = parseNow(buffer) as readonly (readonly string[])[];
      return line?.[0] === wanted ? named(line) : undefined;
    },
    close: async () => {
      for (const file of files) await file.close();
    },
  };
}

const FILES = 2;

const named = (row: readonly string[]) =>
  Object.fromEntries(COLUMNS.map((c, i) => [c, row[i] ?? ''])) as unknown as JournalLine;

interface PlacedLine {
  readonly line: JournalLine;
  /** Bytes before it, and its own. */
  readonly at: number;
  readonly length: number;
}

async function* placedLines(path: string): AsyncGenerator<PlacedLine> {
  if ((await stat(path).catch(() => null)) === null) return;
  const rows = parse({
    relax_column_count: true,
    skip_records_with_error: true,
    skip_empty_lines: true,
    info: true,
  });
  pipeline(createReadStream(path), rows, () => undefined); // what fails ends the rows with it
  let at = 0;
  for await (const { record, info } of rows as AsyncIterable<Parsed>) {
    if (record.length === COLUMNS.length && record[0] !== 'name')
      yield { line: named(record), at, length: info.bytes - at };
    at = info.bytes;
  }
}

interface Parsed {
  readonly record: readonly string[];
  readonly info: { readonly bytes: number };
}

/** Lines of a file of ours; a last one that was cut off is passed over. None where there is no file. */
export async function* linesOf(path: string): AsyncGenerator<JournalLine> {
  for await (const { line } of placedLines(path)) yield line;
}

export async function openJournal(out: string, name: string): Promise<Journal> {
  const { whole, begun, before } = parts(out, name);
  const lines = await growing(begun, 'w');
  await lines.add(named(COLUMNS));
  return {
    write: lines.add,
    finish: async () => {
      await lines.close();
      await rename(begun, whole);
      await rm(before, { force: true });
    },
    leave: lines.close,
  };
}

/** A file that grows by a line at a time, each handed to the disk before the next is asked for. */
async function growing(path: string, flags: 'a' | 'w') {
  const file = await open(path, flags);
  return {
    add: (line: JournalLine) => file.appendFile(written(COLUMNS.map((c) => line[c]))),
    close: () => file.close(),
  };
}

/** A result as a line. */
export const lineOf = (made: Made, hash: string): JournalLine => ({
  name: made.name,
  status: made.status,
  hash,
  findings: String(made.findings),
  message: made.message,
  blanks: made.blanks,
  mass: made.mass,
  files: String(made.files),
  sheets: made.sheets,
  price: made.price,
  contents: made.contents,
});
