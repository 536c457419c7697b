import { MM_PER_INCH, type Unit } from '@tinwright/core';
import type { ShearPlan } from '@tinwright/cutting';
import { changedText, dataOf, type ListedRow } from '../text/changed-text.js';

/** A rack file as data, which was read before. */
interface RackData {
  readonly units?: unknown;
  readonly sheets?: readonly ListedRow[];
  readonly offcuts?: readonly ListedRow[];
}

/**
 * The text of a rack file after its sheets were cut: used offcuts gone, counted sheets fewer, new offcuts behind the
 * others under the names they have on the plan, of the metal that was said of what they come from. The rest stays.
 * @param job goes before the names of new offcuts
 */
export function cutRackText(text: string, plans: readonly ShearPlan[], job: string): string {
  const { units, sheets = [], offcuts = [] } = dataOf(text) as RackData;
  const cut = plans.flatMap((p) => p.sheets);
  const used = (row: ListedRow) => cut.filter(({ stock }) => stock.name === row.name).length;
  const fewer = [...sheets.entries()].flatMap(([i, row]): [number, ListedRow][] =>
    typeof row.count === 'number' && used(row) > 0 ? [[i, { ...row, count: row.count - used(row) }]] : [],
  );
  const without = new Set([...offcuts.keys()].filter((i) => used(offcuts[i] as ListedRow) > 0));
  const stock = [...sheets, ...offcuts];
  const names = new Set(stock.map((row) => row.name));
  const more = cut.flatMap(({ stock: { name: of }, offcuts: left }, number) =>
    left.map(({ w, h }, i): ListedRow => {
      const name = free(`${job} offcut ${number + 1}.${i + 1}`, names);
      names.add(name);
      return { name, ...metalOf(stock.find((row) => row.name === of)), size: sizeOf([w, h], units) };
    }),
  );
  const counted = fewer.length === 0 ? text : changedText(text, { list: 'sheets', rows: new Map(fewer) });
  return without.size + more.length === 0
    ? counted
    : changedText(counted, { list: 'offcuts', without, more });
}

function free(name: string, taken: ReadonlySet<unknown>): string {
  for (let n = 1; ; n++) {
    const tried = n === 1 ? name : `${name} (${n})`;
    if (!taken.has(tried)) return tried;
  }
}

const METAL = ['material', 'thickness', 'gauge', 'grain'];

/** Metal as a row says it: a thickness put into another unit would be rounded, and another one. */
const metalOf = (row: ListedRow = {}): ListedRow =>
  Object.fromEntries(METAL.flatMap((key) => (Object.hasOwn(row, key) ? [[key, row[key]]] : [])));

function sizeOf(size: readonly [number, number], units: unknown): readonly number[] {
  const unit: Unit = units === 'in' ? 'in' : 'mm';
  return size.map((mm) => (unit === 'mm' ? Number(mm.toFixed(2)) : Number((mm / MM_PER_INCH).toFixed(4))));
}
