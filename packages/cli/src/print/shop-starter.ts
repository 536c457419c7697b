import { isGroup } from '@tinwright/core/internal';
import { DEFAULT_SHOP, EXAMPLE_PRESS } from '@tinwright/shop';
import { SHOP_WORDS } from '@tinwright/shop/internal';
import { stringify } from 'yaml';
import { type CommentedLine, commented } from './commented.js';

const SCHEMA_FILE = 'tinwright-shop.schema.json';

/** The default shop as a commented file, and a press brake in comments. */
export function shopStarter(): string {
  const { assumed: _, press: __, strips: ___, units, ...shop } = DEFAULT_SHOP;
  const press = commented(linesOf({ press: EXAMPLE_PRESS }));
  const lines = [
    `# yaml-language-server: $schema=${SCHEMA_FILE}`,
    `# For your editor, once: tinwright starter shop --schema > ${SCHEMA_FILE}`,
    '# A shop, invented: measure your own machines, and take out those you do not have. tinwright shop THIS-FILE',
    ...commented(linesOf({ units, ...shop })),
    '# A press brake, invented too. For one of your own take the # away in front of every line.',
    ...press.map((line) => `# ${line}`),
    '# Test strips of your own metal: tinwright strip',
  ];
  return `${lines.join('\n')}\n`;
}

type Group = Readonly<Record<string, unknown>>;

function linesOf(group: Group, path = '', indent = ''): readonly CommentedLine[] {
  return Object.entries(group).flatMap(([key, value]): readonly CommentedLine[] => {
    const at = path === '' ? key : `${path}.${key}`;
    if (value === null || (Array.isArray(value) && value.length === 0)) return [];
    if (!isNested(value)) return [[`${indent}${key}: ${inline(value)}`, meaning(at)]];
    const head: CommentedLine = [`${indent}${key}:`, meaning(at)];
    const inner = `${indent}  `;
    if (!Array.isArray(value)) return [head, ...linesOf(value as Group, at, inner)];
    return [head, ...value.flatMap((entry: Group, i) => entryLines(entry, i === 0 ? at : `${at}[]`, inner))];
  });
}

/** An entry of a list: on one line, or a value a line where some are lists. */
function entryLines(entry: Group, path: string, indent: string): readonly CommentedLine[] {
  if (!Object.values(entry).some(Array.isArray)) return [[`${indent}- ${inline(entry)}`, '']];
  const lines = linesOf(entry, path, `${indent}  `);
  return lines.map(([text, comment], i) => [i === 0 ? `${indent}- ${text.trimStart()}` : text, comment]);
}

function meaning(path: string): string {
  const word = SHOP_WORDS[path];
  if (word === undefined) return '';
  const { words, measure } = word;
  return measure === 'length' || measure === ''
    ? words
    : `${words}, ${measure === 'T' ? 'thicknesses' : measure}`;
}

const isNested = (value: unknown) => isGroup(value) || (Array.isArray(value) && isGroup(value[0]));
const inline = (value: unknown) =>
  stringify(value, { collectionStyle: 'flow', lineWidth: 0, flowCollectionPadding: true }).trimEnd();
