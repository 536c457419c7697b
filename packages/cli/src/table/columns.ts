import type { AnyFamily, Path } from '@tinwright/core';
import { nearest, quoted } from '@tinwright/core/internal';
import { type CellPlace, TableError } from './row.js';

const FEW = 9;

type Group = Readonly<Record<string, unknown>>;

/** The column that names a row. */
export const NAME = 'name';

const PART = ['quantity', 'note'];
const STOCK = ['material', 'thickness', 'gauge'];
const BENDING = ['rule', 'k', 'group', 'insideRadius', 'perRadius', 'perThickness'];

/**
 * Where the values of a column go in a job: `body.length`, `stock.thickness`, `body.legs[1]`, `measured.body.length`,
 * and of a job with one part its parameters by themselves.
 * @throws TableError for a name that the job has no place for, with the nearest one it has
 */
export function pathOfColumn(
  name: string,
  data: unknown,
  families: readonly AnyFamily[],
  place: CellPlace,
): Path {
  const known = knownColumns(data, families);
  const plain = name.replaceAll(/\[\d+\]/g, '');
  if (name.startsWith('measured.')) return ['measured', name.slice('measured.'.length)];
  const found = known.get(plain);
  if (found === undefined)
    throw new TableError(place, `unknown column ${quoted(name)}. ${advice(name, [NAME, ...known.keys()])}`);
  const steps = [...name.matchAll(/\[(\d+)\]/g)].map((m) => Number(m[1]));
  return [...found, ...steps];
}

/** The nearest column; the first few of all where none is near. */
function advice(name: string, known: readonly string[]): string {
  const near = nearest(name, known);
  return near === null
    ? `Known: ${known.slice(0, FEW).join(', ')}, and other parameters of the parts as PART.PARAMETER`
    : `Did you mean "${near}"? Rename the column`;
}

/** Every column a table of this job may have, with its path. */
function knownColumns(data: unknown, families: readonly AnyFamily[]): ReadonlyMap<string, Path> {
  const parts = (data as { parts?: unknown } | null)?.parts;
  const list = (Array.isArray(parts) ? parts : []) as readonly Group[];
  const found = new Map<string, Path>();
  const add = (prefix: string, path: Path, names: readonly string[]) => {
    for (const name of names)
      found.set(prefix === '' ? name : `${prefix}.${name}`, [...path, ...name.split('.')]);
  };
  add('stock', ['stock'], STOCK);
  add('bending', ['bending'], BENDING);
  list.forEach((part, i) => {
    const family = families.find((f) => f.name === part?.family);
    const sizes = Object.keys(family?.describe.sizes ?? {}).filter((s) => !s.includes('['));
    const names = [
      ...sizes,
      ...PART,
      ...STOCK.map((s) => `stock.${s}`),
      ...BENDING.map((b) => `bending.${b}`),
    ];
    if (typeof part?.name === 'string') add(part.name, ['parts', i], names);
    if (list.length === 1)
      add(
        '',
        ['parts', i],
        names.filter((n) => !/^(stock|bending)\./.test(n)),
      );
  });
  return found;
}
