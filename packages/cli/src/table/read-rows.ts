import type { AnyFamily, Path } from '@tinwright/core';
import { isDeviceName, isPlainName } from '@tinwright/core/internal';
import { plainDecimal } from '../text/plain-decimal.js';
import { NAME, pathOfColumn } from './columns.js';
import type { CellPlace, Row, SizeCell } from './row.js';
import { textTable } from './text-table.js';

/** A value under the name of its column; `head` is where that stands, if not beside the value. */
export interface RawCell extends CellPlace {
  readonly name: string;
  readonly value: unknown;
  readonly head?: CellPlace | undefined;
}

/** Values of one row under the names of their columns, with their places. */
export interface RawRow extends CellPlace {
  readonly cells: readonly RawCell[];
}

/** The job that rows are laid over. */
export interface Base {
  readonly data: unknown;
  readonly families: readonly AnyFamily[];
}

const LONGEST_NAME = 80;

/**
 * Rows with their values' paths. One without a name gets its number; one whose name is taken, or cannot be that of a
 * folder, is refused by itself.
 * @throws TableError for a column the job has no place for
 */
export async function* readRows(raw: AsyncIterable<RawRow>, base: Base): AsyncGenerator<Row> {
  const paths = new Map<string, Path>();
  const names = textTable();
  let number = 0;
  for await (const { line, column: at, cells } of raw) {
    number += 1;
    const read: SizeCell[] = [];
    let name = `size-${number}`;
    for (const { name: column, value, head, ...place } of cells) {
      if (column !== NAME && !paths.has(column))
        paths.set(column, pathOfColumn(column, base.data, base.families, head ?? place));
      if (value === '' || value === null) continue;
      if (column === NAME) name = String(value).trim();
      else {
        const path = paths.get(column) ?? [];
        read.push({ ...place, path, value: asGiven(value, path) });
      }
    }
    const key = name.normalize('NFC').toLowerCase();
    const [before] = names.get(key) ?? [];
    if (before === undefined) names.set(key, [line, 0]);
    const refused = refusal(name, before);
    yield { line, column: at, number, name, cells: read, ...(refused !== null && { refused }) };
  }
}

function refusal(name: string, before: number | undefined): string | null {
  if (!isPlainName(name) || name.length > LONGEST_NAME)
    return `name: ${JSON.stringify(name)} given; letters, digits, - and _ allowed, a letter or digit first, up to ${LONGEST_NAME}`;
  if (isDeviceName(name))
    return `name: ${JSON.stringify(name)} given; some systems keep that name for a device`;
  return before === undefined ? null : `name: ${JSON.stringify(name)} is taken by the row in line ${before}`;
}

/** Text that is a number as the number; notes stay text. */
function asGiven(value: unknown, path: Path): unknown {
  if (typeof value !== 'string' || path.at(-1) === 'note') return value;
  const text = value.trim();
  return plainDecimal(text) ?? text;
}
