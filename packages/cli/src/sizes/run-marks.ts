import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { PROGRAM } from '@tinwright/core';
import type { Row } from '../table/row.js';
import type { Common } from './make-size.js';

/** What sizes are made of besides their row, each told by its content: 16 hexadecimal digits, the program by its version. */
export interface RunMarks {
  readonly program: string;
  readonly job: string;
  readonly shop: string;
  readonly rack: string;
  readonly options: string;
  readonly modules: string;
}

/** The rows of a run: how many, and their names and values by their content. */
export interface TableMark {
  readonly rows: number;
  readonly table: string;
}

/** Digits that tell contents apart. */
const DIGITS = 16;

export async function runMarks(common: Common, modules: readonly string[]): Promise<RunMarks> {
  const { data, shop, cutList, dxf, pictures } = common;
  const texts = await Promise.all(modules.map((m) => readFile(m)));
  return {
    program: PROGRAM.mark,
    job: markOf(data),
    shop: markOf(shop),
    rack: markOf(cutList),
    options: markOf({ dxf, pictures }),
    modules: markOf(texts.map((t) => t.toString('base64'))),
  };
}

const markOf = (value: unknown): string => hashOf([JSON.stringify(value) ?? '']);

function hashOf(texts: readonly string[]): string {
  const hash = createHash('sha256');
  for (const t of texts) hash.update(t);
  return hash.digest('hex').slice(0, DIGITS);
}

/** Tells by its content whether a size is the same as before. */
export const rowHash = (marks: RunMarks, row: Row): string =>
  hashOf([JSON.stringify(marks), '\n', JSON.stringify(valuesOf(row))]);

const valuesOf = ({ cells }: Row) => cells.map(({ path, value }) => [path, value]);

/** Rows as they are read, marked all together once the last one came. */
export function tableMarker(): { readonly add: (row: Row) => void; readonly mark: () => TableMark } {
  const hash = createHash('sha256');
  let rows = 0;
  return {
    add: (row) => {
      rows += 1;
      hash.update(`${JSON.stringify([row.name, valuesOf(row)])}\n`);
    },
    mark: () => ({ rows, table: hash.copy().digest('hex').slice(0, DIGITS) }),
  };
}
