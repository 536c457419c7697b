import { textBytes } from '../text/file-bytes.js';
import { readText, TextError } from '../text/read-text.js';
import { linesOf } from './lines.js';
import { combinations, countOf } from './ranges.js';
import { readCsv } from './read-csv.js';
import type { RawRow } from './read-rows.js';
import { type CellPlace, MOST_ROWS, TableError } from './row.js';

type Group = Readonly<Record<string, unknown>>;
type Locate = (path: readonly (string | number)[]) => CellPlace;

/** Rows of a table: CSV, TSV, JSON lines or YAML, as its name says. @throws TableError */
export function readTable(path: string): AsyncIterable<RawRow> {
  if (/\.(tsv|tab)$/i.test(path)) return readCsv(path, '\t');
  if (/\.(jsonl|ndjson)$/i.test(path)) return readJsonLines(path);
  if (/\.(ya?ml|json)$/i.test(path)) return readYaml(path);
  return readCsv(path, null);
}

async function* readJsonLines(path: string): AsyncGenerator<RawRow> {
  for await (const { line, text } of linesOf(path)) {
    const place = { line, column: 1 };
    const json = text.replace(/^\uFEFF/, '').trim();
    if (json === '') continue;
    let entry: unknown;
    try {
      entry = JSON.parse(json);
    } catch {
      throw new TableError(place, 'this line is no JSON');
    }
    yield* rowsOf(entry, place, () => place);
  }
}

async function* readYaml(path: string): AsyncGenerator<RawRow> {
  try {
    const { data, locate } = readText(await textBytes(path, 'table'), 'table');
    yield* listedRows(data, (at) => locate({ path: at }));
  } catch (error) {
    const [problem] = error instanceof TextError ? error.problems : [];
    throw problem === undefined ? error : new TableError(problem.place, problem.message);
  }
}

/** Rows of a list of groups, as `sizes:` of a job has it. */
export async function* listedRows(data: unknown, locate: Locate): AsyncGenerator<RawRow> {
  if (!Array.isArray(data))
    throw new TableError(locate([]), 'a list of rows is wanted, each with named values');
  for (const [i, entry] of data.entries()) yield* rowsOf(entry, locate([i]), (key) => locate([i, key]));
}

function* rowsOf(entry: unknown, place: CellPlace, placeOf: (key: string) => CellPlace): Generator<RawRow> {
  if (typeof entry !== 'object' || entry === null || Array.isArray(entry))
    throw new TableError(place, 'a row is a group of names and values');
  const { name } = entry as Group;
  if (typeof name === 'object' && name !== null)
    throw new TableError(
      placeOf('name'),
      'name: one text wanted; rows of several values are numbered after it',
    );
  const count = countOf(entry as Group);
  if (count > MOST_ROWS) throw new TableError(place, `${count} rows in one, up to ${MOST_ROWS} allowed`);
  for (const row of combinations(entry as Group)) {
    const cells = Object.entries(row).map(([name, value]) => ({ ...placeOf(name), name, value }));
    yield { ...place, cells };
  }
}
