import { isDeepStrictEqual } from 'node:util';
import { documentOf } from '@tinwright/page/internal';
import {
  type Document,
  isAlias,
  isCollection,
  isMap,
  isNode,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  type ParsedNode,
  stringify,
  visit,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';

/** A row of a list as data. */
export type ListedRow = Readonly<Record<string, unknown>>;

/** What becomes of one list that stands at the top of a file. */
export interface ListChange {
  readonly list: string;
  /** Rows to be put in the place of those of a number. */
  readonly rows?: ReadonlyMap<number, ListedRow>;
  /** Numbers of rows that go. */
  readonly without?: ReadonlySet<number>;
  /** Rows that come behind the others. */
  readonly more?: readonly ListedRow[];
}

/**
 * The text of a YAML or JSON file with a list changed and every other letter as it was: comments, blanks and line ends.
 * Where a value that changes or goes is used a second time, by an alias, aliases are written out first. What cannot be
 * changed in its place even then is written anew from its data.
 */
export function changedText(text: string, change: ListChange): string {
  const wanted = changedData(dataOf(text), change);
  for (const from of [() => text, () => plainText(text)]) {
    const tried = spliced(from(), change);
    if (isDeepStrictEqual(dataOf(tried), wanted)) return tried;
  }
  return isJson(text) ? `${JSON.stringify(wanted, null, 2)}\n` : stringify(wanted, { lineWidth: 0 });
}

/** The data in a text; null where it is none, or where an alias has lost what it names. */
export function dataOf(text: string): unknown {
  const document = documentOf(text);
  if (document.errors.length > 0) return null;
  try {
    return document.toJS();
  } catch {
    return null;
  }
}

function changedData(data: unknown, { list, rows, without, more = [] }: ListChange): unknown {
  const old = (data as ListedRow)[list];
  const kept = (Array.isArray(old) ? old : [])
    .map((row, i) => rows?.get(i) ?? row)
    .filter((_, i) => without?.has(i) !== true);
  return { ...(data as ListedRow), [list]: [...kept, ...more] };
}

/** Letters of a text to be replaced. */
interface Splice {
  readonly from: number;
  readonly to: number;
  readonly by: string;
}

const apply = (text: string, splices: readonly Splice[]) =>
  splices
    .toSorted((a, b) => b.from - a.from || b.to - a.to)
    .reduce((t, { from, to, by }) => `${t.slice(0, from)}${by}${t.slice(to)}`, text);

/** A text with its document, and how values are written in it. */
interface Source {
  readonly text: string;
  readonly document: Document;
  readonly end: string;
  readonly say: (value: unknown) => string;
}

function sourceOf(text: string): Source {
  const say = isJson(text) ? (value: unknown) => JSON.stringify(value) : flow;
  return { text, document: documentOf(text), end: text.includes('\r\n') ? '\r\n' : '\n', say };
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text.replace(/^\uFEFF/, ''));
    return true;
  } catch {
    return false;
  }
}

/** In a list, so that what separates its values is quoted in a value. */
const flow = (value: unknown) =>
  stringify([value], { collectionStyle: 'flow', lineWidth: 0 }).trim().slice(1, -1).trim();

function spliced(text: string, { list, rows, without, more = [] }: ListChange): string {
  const source = sourceOf(text);
  const root = source.document.contents;
  if (!isMap(root)) return text;
  const pair = root.items.find(({ key }) => isScalar(key) && key.value === list);
  if (pair === undefined) return apply(text, newList(source, root, list, more));
  if (!isSeq(pair.value)) return text;
  const seq = pair.value as YAMLSeq<ParsedNode>;
  const changed = [...(rows ?? [])].flatMap(([i, row]) => rowSplices(source, seq.items[i], row));
  const gone = seq.items.flatMap((_, i) => (without?.has(i) === true ? [i] : []));
  const whole = gone.length === seq.items.length;
  if (seq.flow === true)
    return apply(text, [
      ...changed,
      ...(whole ? [over(seq, `[${more.map(source.say).join(', ')}]`)] : inFlow(source, seq, gone, more)),
    ]);
  const empty = whole && more.length === 0 ? emptied(pair, text) : [];
  return apply(text, [...changed, ...inLines(source, seq, gone, more), ...empty]);
}

const over = (node: Node, by: string): Splice => ({ from: startOf(node), to: endOf(node), by });

const startOf = (node: Node) => node.range?.[0] ?? 0;

/** Behind the last letter of a value, comments and line ends behind it not counted. */
function endOf(node: Node): number {
  const last = isCollection(node) && node.flow !== true ? node.items.at(-1) : undefined;
  const inner = isMap(node) ? ((last as Pair | undefined)?.value ?? null) : last;
  return isNode(inner) ? endOf(inner) : (node.range?.[1] ?? 0);
}

/** Behind the line that a place stands in. */
function lineAfter(text: string, at: number): number {
  const stop = text.indexOf('\n', text.slice(0, at).trimEnd().length);
  return stop < 0 ? text.length : stop + 1;
}

/** A list that a file does not have yet: behind what it says. */
function newList(
  { text, document, end, say }: Source,
  root: YAMLMap,
  list: string,
  more: readonly ListedRow[],
) {
  const last = root.items.at(-1)?.value;
  if (root.flow === true) {
    const at = isNode(last) ? endOf(last) : startOf(root) + 1;
    const key = say === flow ? list : JSON.stringify(list);
    return [{ from: at, to: at, by: `${isNode(last) ? ', ' : ''}${key}: [${more.map(say).join(', ')}]` }];
  }
  const at = document.directives?.docEnd === true ? (root.range?.[2] ?? 0) : text.length;
  const before = at === 0 || text[at - 1] === '\n' ? '' : end;
  const rows = more.map((row) => `  - ${say(row)}${end}`).join('');
  return [{ from: at, to: at, by: `${before}${list}:${end}${rows}` }];
}

/** A row in the place of another: the values that differ, where it has the same keys, else all of it. */
function rowSplices(
  { document, say }: Source,
  node: ParsedNode | undefined,
  row: ListedRow,
): readonly Splice[] {
  if (node === undefined) return [];
  const pairs = isMap(node) ? node.items : [];
  const same =
    pairs.length === Object.keys(row).length && pairs.every(({ key }) => Object.hasOwn(row, nameOf(key)));
  if (!same) return [over(node, say(row))];
  return pairs.flatMap(({ key, value }): readonly Splice[] => {
    const wanted = row[nameOf(key)];
    return !isNode(value) || isDeepStrictEqual(readOf(value, document), wanted)
      ? []
      : [over(value, say(wanted))];
  });
}

const nameOf = (key: unknown) => (isScalar(key) ? String(key.value) : '');

/** What a node says, what an alias stands for. */
const readOf = (node: Node, document: Document): unknown =>
  (isAlias(node) ? node.resolve(document) : node)?.toJS(document);

/** Rows of a list between brackets that go, some staying, and rows behind them, set apart as the others are. */
function inFlow(
  { text, say }: Source,
  seq: YAMLSeq<ParsedNode>,
  gone: readonly number[],
  more: readonly ListedRow[],
): readonly Splice[] {
  const starts = seq.items.map(startOf);
  const ends = seq.items.map(endOf);
  const at = (list: readonly number[], i: number) => list[i] as number;
  const taken = gone.map((i): Splice => {
    const stays = seq.items.findIndex((_, j) => j > i && !gone.includes(j));
    if (stays >= 0) return { from: at(starts, i), to: at(starts, i + 1), by: '' };
    return { from: at(ends, i - 1), to: at(ends, i), by: '' };
  });
  const last = ends.length - 1;
  const space = text.slice(startOf(seq) + 1, at(starts, 0));
  const between = space.trim() === '' && space.includes('\n') ? `,${space}` : ', ';
  const added = more.map((row) => `${between}${say(row)}`).join('');
  return [...taken, { from: at(ends, last), to: at(ends, last), by: added }];
}

/** Rows of a list with a dash before each that go with their lines, and rows behind them, a line each. */
function inLines(
  { text, end, say }: Source,
  seq: YAMLSeq<ParsedNode>,
  gone: readonly number[],
  more: readonly ListedRow[],
): readonly Splice[] {
  const lineOf = (at: number) => text.lastIndexOf('\n', at - 1) + 1;
  const dashes = seq.items.map((item) => text.lastIndexOf('-', startOf(item) - 1));
  const taken = gone.map((i): Splice => {
    const item = seq.items[i] as ParsedNode;
    return { from: lineOf(dashes[i] as number), to: lineAfter(text, endOf(item)), by: '' };
  });
  const first = dashes[0] as number;
  const at = lineAfter(text, endOf(seq));
  const before = text[at - 1] === '\n' || gone.at(-1) === dashes.length - 1 ? '' : end;
  const added = more.map((row) => `${text.slice(lineOf(first), first)}- ${say(row)}${end}`).join('');
  return [...taken, { from: at, to: at, by: more.length === 0 ? '' : `${before}${added}` }];
}

/** What says that a list of lines has none left. */
function emptied({ key }: Pair, text: string): readonly Splice[] {
  const colon = text.indexOf(':', isNode(key) ? endOf(key) : 0) + 1;
  return [{ from: colon, to: colon, by: ' []' }];
}

/** The text with what aliases stand for in their place, and nothing named. */
function plainText(text: string): string {
  const { document, say } = sourceOf(text);
  const splices: Splice[] = [];
  visit(document, {
    Alias: (_, node) => {
      splices.push(over(node, say(readOf(node, document))));
    },
    Value: (_, node) => {
      const name = node.anchor === undefined ? null : text.lastIndexOf(`&${node.anchor}`, startOf(node));
      if (name !== null) splices.push({ from: name, to: startOf(node), by: '' });
    },
  });
  return apply(text, splices);
}
