import { MM_PER_INCH, type Unit } from '@tinwright/core';
import type { ShearPlan, StockSheet } from '@tinwright/cutting';
import { type Document, isMap, isSeq, parseDocument } from 'yaml';

/**
 * The text of a rack file after its sheets were cut: used offcuts gone, counted sheets fewer, new offcuts behind the
 * others under the names they have on the plan. Comments stay.
 * @param job goes before the names of new offcuts
 */
export function cutRackText(text: string, plans: readonly ShearPlan[], job: string): string {
  const document = parseDocument(text);
  const units: Unit = document.get('units') === 'in' ? 'in' : 'mm';
  const used = new Map<string, number>();
  for (const { stock } of plans.flatMap((p) => p.sheets))
    used.set(stock.name, (used.get(stock.name) ?? 0) + 1);
  fewer(document, used);
  gone(document, used);
  const names = new Set([...namesIn(document, 'sheets'), ...namesIn(document, 'offcuts')]);
  let number = 0;
  for (const { stock, offcuts } of plans.flatMap((p) => p.sheets)) {
    number++;
    offcuts.forEach(({ w, h }, i) => {
      const name = free(`${job} offcut ${number}.${i + 1}`, names);
      names.add(name);
      add(document, entry(name, stock, [w, h], units));
    });
  }
  return document.toString({ lineWidth: 0 });
}

function namesIn(document: Document, list: string): readonly string[] {
  const found = document.get(list);
  return isSeq(found) ? found.items.map((i) => (isMap(i) ? String(i.get('name')) : '')) : [];
}

function fewer(document: Document, used: ReadonlyMap<string, number>): void {
  namesIn(document, 'sheets').forEach((name, i) => {
    const path = ['sheets', i, 'count'];
    const count = document.getIn(path);
    if (typeof count === 'number') document.setIn(path, count - (used.get(name) ?? 0));
  });
}

function gone(document: Document, used: ReadonlyMap<string, number>): void {
  const names = namesIn(document, 'offcuts');
  for (const [i, name] of [...names.entries()].toReversed())
    if (used.has(name)) document.deleteIn(['offcuts', i]);
}

function free(name: string, taken: ReadonlySet<string>): string {
  for (let n = 1; ; n++) {
    const tried = n === 1 ? name : `${name} (${n})`;
    if (!taken.has(tried)) return tried;
  }
}

function entry(
  name: string,
  { material, thickness, grain }: StockSheet,
  size: readonly [number, number],
  units: Unit,
): object {
  const say = (mm: number) =>
    units === 'mm' ? Number(mm.toFixed(2)) : Number((mm / MM_PER_INCH).toFixed(4));
  const thick = units === 'mm' ? Number(thickness.toFixed(4)) : Number((thickness / MM_PER_INCH).toFixed(6));
  return { name, material, thickness: thick, size: size.map(say), ...(grain === null ? {} : { grain }) };
}

function add(document: Document, row: object): void {
  const node = document.createNode(row, { flow: true });
  const list = document.get('offcuts');
  if (isSeq(list)) list.add(node);
  else {
    document.set('offcuts', document.createNode([]));
    document.addIn(['offcuts'], node);
  }
}
