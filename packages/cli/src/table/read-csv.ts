import { createReadStream } from 'node:fs';
import { parse } from 'csv-parse';
import { checkFile } from '../text/file-bytes.js';
import { LONGEST_ROW, ROW_TOO_LONG } from './lines.js';
import type { RawRow } from './read-rows.js';
import { type CellPlace, TableError } from './row.js';

interface Parsed {
  readonly record: readonly string[];
  readonly raw: string;
  readonly info: { readonly lines: number };
}

/**
 * Rows of a CSV or TSV file as they come: quotes, a byte order mark and any line ends are taken.
 * @param delimiter what stands between cells; null for a comma, or a semicolon where the first line has no comma
 * @throws TableError
 */
export async function* readCsv(path: string, delimiter: ',' | '\t' | null): AsyncGenerator<RawRow> {
  await checkFile(path);
  const between = delimiter ?? (await delimiterOf(path));
  const parser = parse({
    bom: true,
    info: true,
    raw: true,
    delimiter: between,
    record_delimiter: ['\r\n', '\n', '\r'],
    skip_empty_lines: true,
    relax_column_count: true,
    max_record_size: LONGEST_ROW,
  });
  createReadStream(path)
    .on('error', (error) => parser.destroy(error))
    .pipe(parser);
  let header: readonly string[] | null = null;
  let heads: readonly CellPlace[] = [];
  try {
    for await (const { record, raw: given, info } of parser as AsyncIterable<Parsed>) {
      const raw = given.replace(/^[\r\n]+/, ''); // lines that were skipped
      const line = info.lines - (raw.trimEnd().match(/\r\n|\n|\r/g)?.length ?? 0);
      const starts = startsOf(raw, between);
      if (header === null) {
        heads = starts.map((column) => ({ line, column }));
        header = record.map((h) => h.trim());
        checkHeader(header, line, starts);
      } else if (record.some((c) => c.trim() !== '')) {
        if (record.length > header.length && record.slice(header.length).some((c) => c.trim() !== ''))
          throw new TableError(
            { line, column: starts[header.length] ?? 1 },
            `${record.length} cells in this row, ${header.length} in the first`,
          );
        const names: readonly string[] = header;
        yield {
          line,
          column: 1,
          cells: record.slice(0, names.length).map((value, i) => ({
            line,
            column: starts[i] ?? 1,
            name: names[i] ?? '',
            value,
            head: heads[i],
          })),
        };
      }
    }
  } catch (error) {
    throw error instanceof TableError ? error : csvProblem(error);
  }
}

function checkHeader(header: readonly string[], line: number, starts: readonly number[]): void {
  header.forEach((name, i) => {
    const place = { line, column: starts[i] ?? 1 };
    if (name === '') throw new TableError(place, 'a column without a name');
    if (header.indexOf(name) < i) throw new TableError(place, `column ${JSON.stringify(name)} stands twice`);
  });
}

/** Columns where cells begin, counted from 1. */
function startsOf(raw: string, delimiter: string): readonly number[] {
  const starts = [1];
  let quoted = false;
  [...raw].forEach((c, i) => {
    if (c === '"') quoted = !quoted;
    else if (c === delimiter && !quoted) starts.push(i + 2);
  });
  return starts;
}

async function delimiterOf(path: string): Promise<string> {
  for await (const chunk of createReadStream(path, { end: 4095, encoding: 'utf8' })) {
    const [first = ''] = String(chunk).split(/[\r\n]/);
    return first.includes(';') && !first.includes(',') ? ';' : ',';
  }
  return ',';
}

const WORDS: Readonly<Record<string, string>> = {
  CSV_QUOTE_NOT_CLOSED: 'a quote is open at the end of the file',
  CSV_INVALID_CLOSING_QUOTE: 'a quote ends within a cell. Double the quotes within it',
  INVALID_OPENING_QUOTE: 'a quote begins within a cell. Put the whole cell in quotes',
  CSV_MAX_RECORD_SIZE: `${ROW_TOO_LONG}. A quote may be left open`,
};

function csvProblem(error: unknown): unknown {
  const { code, lines, message } = error as { code?: string; lines?: number; message?: string };
  const said = WORDS[code ?? ''] ?? (code?.startsWith('CSV_') ? message : undefined);
  return said === undefined ? error : new TableError({ line: lines ?? 1, column: 1 }, said);
}
