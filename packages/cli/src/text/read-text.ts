import type { Problem } from '@tinwright/core';
import { checkStructure, dataOf, documentOf, OTHER_SPACE } from '@tinwright/page/internal';
import { type Document, LineCounter } from 'yaml';
import { offsets } from './text-places.js';

/** Place in a file, counted from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** A file's data with a way back from a path to where it stands in the text. */
export interface ReadText {
  readonly data: unknown;
  readonly locate: (problem: Pick<Problem, 'path' | 'at'>) => Place;
}

/** What a file is about, for the words of its problems. */
export type TextKind = 'job' | 'shop' | 'strips' | 'table' | 'layers' | 'rack';

/** Where somebody finds out what stands in such a file. */
const LOOK: Readonly<Record<TextKind, string>> = {
  job: 'See `tinwright starter`',
  shop: 'See `tinwright starter shop`',
  strips: 'See `tinwright strip --help`',
  table: 'See `tinwright sizes --help`',
  layers: 'See `tinwright make --help`',
  rack: 'See `tinwright shear --help`',
};

/** Longest file that is read, bytes. */
export const LONGEST_TEXT = 1_000_000;

/** A problem of the text itself, with its place. */
export interface TextProblem extends Problem {
  readonly place: Place;
}

/** The text cannot be read as YAML or JSON. */
export class TextError extends Error {
  override readonly name = 'TextError';
  readonly problems: readonly TextProblem[];
  constructor(problems: readonly TextProblem[]) {
    super(problems.map((p) => p.message).join('\n'));
    this.problems = problems;
  }
}

/**
 * Read a file's bytes: UTF-8, YAML 1.2 or JSON, one document, no tags, no merge keys, few aliases.
 * @throws TextError with the place of every problem
 */
export function readText(bytes: Uint8Array, kind: TextKind = 'job'): ReadText {
  const text = decoded(bytes, kind);
  const lines = new LineCounter();
  const document = parsed(text, lines, kind);
  const at = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line, column: col };
  };
  const slip = syntax(document, at, kind).map((p) => spaceBefore(p, text) ?? p);
  const wrong = slip.length > 0 ? slip : structure(document, at);
  if (wrong.length > 0) throw new TextError(wrong);
  if (document.contents === null)
    throw new TextError([problem('empty', `the ${kind} file is empty`, START, LOOK[kind])]);
  const offsetOf = offsets(document);
  return {
    data: plainData(document),
    locate: ({ path, at: what }) => at(offsetOf(path, what ?? 'value')),
  };
}

/** What the YAML reader found, in our words. */
function syntax(document: Document, at: (offset: number) => Place, kind: TextKind): readonly TextProblem[] {
  const found = [...document.errors, ...document.warnings];
  const deep = found.find((e) => e.message.includes('call stack'));
  if (deep !== undefined)
    return [problem('too-deep', `the ${kind} file is nested too deeply`, at(deep.pos[0]))];
  const [first] = found.toSorted((a, b) => a.pos[0] - b.pos[0]); // what follows a slip follows from it
  return (first === undefined ? [] : [first]).map(({ code, message, pos }) => {
    const [, bracket] = NOT_CLOSED.exec(message) ?? [];
    const said: readonly [string, string] | undefined =
      bracket === undefined
        ? WORDS[code]
        : ['a bracket that was opened before this is not closed', `Close it with ${bracket}`];
    return said === undefined
      ? problem('yaml', `not readable here: ${sentence(message)}`, at(pos[0]))
      : problem('yaml', said[0], at(pos[0]), said[1]);
  });
}

/** A space that is none for the reader, before or behind what parts a value, in the line of a slip: then it is that. */
function spaceBefore({ place }: TextProblem, text: string): TextProblem | null {
  const line = text.split('\n')[place.line - 1] ?? '';
  const at = line.search(new RegExp(`(?<=^[\\s-]*|[:,[{])${OTHER_SPACE.source}`));
  return at < 0
    ? null
    : problem(
        'space',
        'a space here is no plain one',
        { ...place, column: at + 1 },
        'Type it anew with the space bar',
      );
}

/** What the reader says of a bracket that has no end, with the bracket that would be one. */
const NOT_CLOSED = /must (?:be sufficiently indented and )?end with a ([\]}])/;

/** Words for the reader's most common complaints: what is wrong, how to mend it. */
const WORDS: Readonly<Record<string, readonly [string, string]>> = {
  MISSING_CHAR: [
    'a colon, comma, quote or bracket is missing here',
    'Write key: value, a space behind the colon',
  ],
  BAD_INDENT: ['this line is not indented like its neighbours', 'Keys of one group start in the same column'],
  TAB_AS_INDENT: ['a tab is used to indent', 'Use spaces'],
  MULTIPLE_DOCS: ['a second document starts here', 'Keep one document in a file'],
  MULTILINE_IMPLICIT_KEY: ['a colon is missing on this line', 'Write key: value, a space behind the colon'],
  BLOCK_AS_IMPLICIT_KEY: [
    'this line does not belong where it stands',
    'Check its indentation and the line before it',
  ],
  UNEXPECTED_TOKEN: ['this does not belong here', 'Check the line before it'],
  TAG_RESOLVE_FAILED: ['tags (!…) are not read', 'Write the plain value'],
  KEY_OVER_1024_CHARS: ['this key is far too long', ''],
};

const START: Place = { line: 1, column: 1 };

function problem(code: string, message: string, place: Place, fix = ''): TextProblem {
  return { code, path: [], message, fix, place };
}

function refuse(code: string, message: string, fix = ''): never {
  throw new TextError([problem(code, message, START, fix)]);
}

/** What UTF-16 begins with, either way round. */
const UTF_16 = [
  [0xff, 0xfe],
  [0xfe, 0xff],
];

function decoded(bytes: Uint8Array, kind: TextKind): string {
  if (bytes.length > LONGEST_TEXT)
    return refuse('too-long', `a ${kind} file of ${bytes.length} bytes given, up to ${LONGEST_TEXT} allowed`);
  if (UTF_16.some((mark) => mark.every((byte, i) => bytes[i] === byte)))
    return refuse('encoding', `the ${kind} file is UTF-16 text`, 'Save it as UTF-8');
  if (bytes.includes(0)) return refuse('binary', `the ${kind} file is not text (it holds zero bytes)`);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes); // takes a byte order mark off
  } catch {
    return refuse('encoding', `the ${kind} file is not UTF-8 text`, 'Save it as UTF-8');
  }
}

function parsed(text: string, lineCounter: LineCounter, kind: TextKind): Document {
  try {
    return documentOf(text, lineCounter);
  } catch (error) {
    if (error instanceof RangeError) return refuse('too-deep', `the ${kind} file is nested too deeply`);
    throw error;
  }
}

const sentence = (message: string) => {
  const line = message.split('\n')[0] ?? '';
  return `${line.charAt(0).toLowerCase()}${line.slice(1).replace(/[.:]$/, '')}`;
};

function structure(document: Document, at: (offset: number) => Place): readonly TextProblem[] {
  const found: TextProblem[] = [];
  checkStructure(document, (offset, code, message, fix) =>
    found.push(problem(code, message, at(offset), fix)),
  );
  return found;
}

function plainData(document: Document): unknown {
  try {
    return dataOf(document);
  } catch (error) {
    return refuse('aliases', (error as RangeError).message, 'Write the values out');
  }
}
