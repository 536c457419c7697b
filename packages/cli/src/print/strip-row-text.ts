import { isDeepStrictEqual } from 'node:util';
import { MM_PER_INCH, type Unit } from '@tinwright/core';
import type { StripRow } from '@tinwright/shop';
import {
  type Document,
  isMap,
  isScalar,
  isSeq,
  type Node,
  parseDocument,
  stringify,
  type YAMLSeq,
} from 'yaml';

type Data = Readonly<Record<string, unknown>>;

const rounded = (value: number, digits: number) => Number(value.toFixed(digits));

/** A row as it stands in a shop file of a unit. */
export function rowData(row: StripRow, units: Unit): Data {
  const size = (mm: number) => (units === 'mm' ? rounded(mm, 4) : rounded(mm / MM_PER_INCH, 6));
  return {
    name: row.name,
    material: row.material,
    thickness: size(row.thickness),
    insideRadius: size(row.insideRadius),
    k: rounded(row.k, 4),
    kError: rounded(row.kError, 4),
    ...(row.springback === null
      ? {}
      : { springback: rounded(row.springback, 2), springbackError: rounded(row.springbackError, 2) }),
    strips: row.strips,
  };
}

/**
 * The text of a shop file with a row put in the place of number `at` of its strips, or behind them. Comments stay, and
 * so does the rest of the text to the letter where a line can simply be added.
 */
export function withRow(text: string, row: Data, at: number | null): string {
  const wanted = parseDocument(text);
  wanted.setIn(['strips', at ?? count(wanted)], wanted.createNode(row, { flow: true }));
  const added = at === null ? appended(text, row) : replaced(text, row, at);
  if (added !== null && isDeepStrictEqual(dataOf(parseDocument(added)), dataOf(wanted))) return added;
  return wanted.toString({ lineWidth: 0 });
}

const dataOf = (document: Document): unknown => (document.errors.length > 0 ? null : document.toJS());

const stripsOf = (document: Document): YAMLSeq | null => {
  const found = document.get('strips', true);
  return isSeq(found) ? found : null;
};

const count = (document: Document) => stripsOf(document)?.items.length ?? 0;

const flow = (row: Data) => stringify(row, { collectionStyle: 'flow', lineWidth: 0 }).trimEnd();

/** A line more behind the strips there are, or behind everything; null where the text is not written in lines. */
function appended(text: string, row: Data): string | null {
  const end = text.includes('\r\n') ? '\r\n' : '\n';
  const document = parseDocument(text);
  if (!document.has('strips')) {
    const whole = text === '' || text.endsWith('\n') ? text : `${text}${end}`;
    return `${whole}strips:${end}  - ${flow(row)}${end}`;
  }
  const strips = stripsOf(document);
  const [first, last] = [strips?.range?.[0], (strips?.items.at(-1) as Node | undefined)?.range?.[1]];
  if (strips?.flow === true || first === undefined || last === undefined) return null;
  const line = text.slice(text.lastIndexOf('\n', first - 1) + 1, first);
  const stop = text.indexOf('\n', text.slice(0, last).trimEnd().length);
  const [before, after] = stop < 0 ? [`${text}${end}`, ''] : [text.slice(0, stop + 1), text.slice(stop + 1)];
  return `${before}${line}- ${flow(row)}${end}${after}`;
}

/** Every value of a row that is there already, in its place; null where a key is missing or one too many. */
function replaced(text: string, row: Data, at: number): string | null {
  const item = stripsOf(parseDocument(text))?.items[at];
  if (!isMap(item) || item.items.length !== Object.keys(row).length) return null;
  const spots = item.items.flatMap(({ key, value }) =>
    isScalar(key) && isScalar(value) && value.range && Object.hasOwn(row, String(key.value))
      ? [{ from: value.range[0], to: value.range[1], text: scalarText(row[String(key.value)]) }]
      : [],
  );
  if (spots.length !== item.items.length) return null;
  return spots
    .toSorted((a, b) => b.from - a.from)
    .reduce((t, s) => `${t.slice(0, s.from)}${s.text}${t.slice(s.to)}`, text);
}

const scalarText = (value: unknown) =>
  stringify([value], { collectionStyle: 'flow', lineWidth: 0 }).trim().slice(1, -1).trim();
