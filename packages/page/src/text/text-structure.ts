import {
  type Document,
  isAlias,
  isMap,
  isNode,
  isPair,
  isScalar,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
  visit,
  type YAMLMap,
} from 'yaml';

/** A text as all files are read: YAML 1.2, whatever it says of itself; what is wrong with it is in its `errors`. */
export const documentOf = (text: string, lineCounter: LineCounter = new LineCounter()): Document.Parsed =>
  parseDocument(text, {
    lineCounter,
    prettyErrors: false,
    version: '1.2',
    schema: 'core',
    merge: false,
    uniqueKeys: false, // seen to by `checkStructure`
  });

/** What it says as plain data. @throws RangeError where aliases of aliases make too much of it */
export function dataOf(document: Document): unknown {
  try {
    return document.toJS({ maxAliasCount: MOST_ALIASES + 1 }); // the library counts what is named, too
  } catch {
    throw new RangeError('aliases of aliases make far too much of this file');
  }
}

/** Aliases of one file that are followed. */
const MOST_ALIASES = 100;
const DEEPEST = 16;

/** Says what is wrong with the node that stands at an offset. */
export type SayAt = (offset: number, code: string, message: string, fix?: string) => void;

/** What YAML allows and our files do not: one walk, in the time that the text takes. */
export function checkStructure(document: Document, say: SayAt): void {
  const anchors = new Set<string>();
  let aliases = 0;
  visit(document, (_, node, path) => {
    const here = (code: string, message: string, fix = '') =>
      say(startOf(node) ?? startOf((node as Pair).key) ?? 0, code, message, fix);
    if (path.filter((n) => !isPair(n)).length > DEEPEST) {
      here('too-deep', `nested more than ${DEEPEST} deep`);
      return visit.BREAK;
    }
    if (isPair(node)) checkKey(node, here);
    else if (isAlias(node)) {
      aliases += 1;
      const wrong = aliases > MOST_ALIASES ? TOO_MANY : aliasProblem(node.source, path, anchors);
      if (wrong !== null) here('aliases', ...wrong);
      if (wrong === TOO_MANY) return visit.BREAK;
    } else if (isNode(node)) checkNode(node, anchors, say);
    return undefined;
  });
}

const TOO_MANY = [`more than ${MOST_ALIASES} aliases`, 'Write the values out'] as const;

function aliasProblem(
  name: string,
  path: readonly unknown[],
  anchors: ReadonlySet<string>,
): readonly [message: string, fix: string] | null {
  const within = path.some((n) => isNode(n) && 'anchor' in n && n.anchor === name);
  if (within) return [`*${name} stands within what it names`, 'Write the value out'];
  return anchors.has(name) ? null : [`there is nothing named &${name}`, 'Write the value out'];
}

function checkNode(node: Node, anchors: Set<string>, say: SayAt): void {
  if (node.tag !== undefined)
    say(startOf(node) ?? 0, 'tag', 'tags (!…) are not read', 'Write the plain value');
  if ('anchor' in node && typeof node.anchor === 'string') anchors.add(node.anchor);
  if (isMap(node)) checkTwins(node, say);
  if (isScalar(node) && typeof node.value === 'number' && OTHER_BASE.test(node.source ?? ''))
    say(
      startOf(node) ?? 0,
      'number',
      `${node.source} given, a decimal number allowed`,
      'Write it with the digits 0 to 9',
    );
}

/** `0x10` and `0o10` are numbers to YAML; nobody means a size so. */
const OTHER_BASE = /^[+-]?0[xo]/i;

/** Spaces that look like one and are none: what was copied from a text program or a page has them. */
export const OTHER_SPACE: RegExp = /[\u00a0\u2000-\u200a\u202f\u3000]/;

function checkKey({ key, value }: Pair, here: (code: string, message: string, fix: string) => void): void {
  if (!isScalar(key)) here('key', 'a list or group stands where a key should', 'Write key: value');
  else if (key.value === '<<') here('merge-key', 'merge keys (<<) are not read', 'Write the values out');
  else if (OTHER_SPACE.test(String(key.value)))
    here(
      'key',
      'a space in this key is no plain one',
      'Type key: value anew, a plain space behind the colon',
    );
  else if (value === null && typeof key.value === 'number')
    here('key', 'a number stands where a key should', 'Write decimals with a point: 12.5');
}

/** The library looks for twins by comparing each key with each. */
function checkTwins({ items }: YAMLMap, say: SayAt): void {
  const seen = new Set<unknown>();
  for (const { key } of items) {
    const name = isScalar(key) ? key.value : key;
    if (seen.has(name)) say(startOf(key) ?? 0, 'yaml', 'this key stands twice', 'Keep one of the two');
    seen.add(name);
  }
}

/** Where a node begins in the text. */
export const startOf = (node: unknown): number | undefined => (node as Node | null | undefined)?.range?.[0];
