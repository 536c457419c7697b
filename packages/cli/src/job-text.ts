import type { Path, Problem } from '@tinwright/core';
import {
  type Document,
  isAlias,
  isMap,
  isPair,
  isScalar,
  LineCounter,
  type Node,
  parseDocument,
  visit,
} from 'yaml';

/** Place in a job file, counted from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** A job file's data with a way back from a path to where it stands in the text. */
export interface JobText {
  readonly data: unknown;
  readonly locate: (problem: Pick<Problem, 'path' | 'at'>) => Place;
}

/** Longest job file that is read, bytes. */
export const LONGEST_JOB = 1_000_000;
const DEEPEST = 16;
const MOST_ALIASES = 100;

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
 * Read a job file's bytes: UTF-8, YAML 1.2 or JSON, one document, no tags, no merge keys, few aliases.
 * @throws TextError with the place of every problem
 */
export function readJobText(bytes: Uint8Array): JobText {
  const text = decoded(bytes);
  const lines = new LineCounter();
  const document = parsed(text, lines);
  const at = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line, column: col };
  };
  const wrong: TextProblem[] = [
    ...[...document.errors, ...document.warnings].map((e) =>
      problem('yaml', sentence(e.message), at(e.pos[0])),
    ),
    ...structure(document, at),
  ];
  if (wrong.length > 0) throw new TextError(wrong);
  if (document.contents === null)
    throw new TextError([problem('empty', 'the job file is empty', START, 'See `tinwright starter`')]);
  return {
    data: plainData(document),
    locate: ({ path, at: what }) => at(offsetOf(document, path, what ?? 'value')),
  };
}

const START: Place = { line: 1, column: 1 };

function problem(code: string, message: string, place: Place, fix = ''): TextProblem {
  return { code, path: [], message, fix, place };
}

function refuse(code: string, message: string, fix = ''): never {
  throw new TextError([problem(code, message, START, fix)]);
}

function decoded(bytes: Uint8Array): string {
  if (bytes.length > LONGEST_JOB)
    return refuse('too-long', `a job file of ${bytes.length} bytes given, up to ${LONGEST_JOB} allowed`);
  if (bytes.includes(0)) return refuse('binary', 'the job file is not text (it holds zero bytes)');
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes); // takes a byte order mark off
  } catch {
    return refuse('encoding', 'the job file is not UTF-8 text', 'Save it as UTF-8');
  }
}

function parsed(text: string, lineCounter: LineCounter): Document {
  try {
    return parseDocument(text, {
      lineCounter,
      prettyErrors: false,
      version: '1.2',
      schema: 'core',
      merge: false,
    });
  } catch (error) {
    if (error instanceof RangeError) return refuse('too-deep', 'the job file is nested too deeply');
    throw error;
  }
}

const sentence = (message: string) => {
  const line = message.split('\n')[0] ?? '';
  return `${line.charAt(0).toLowerCase()}${line.slice(1).replace(/[.:]$/, '')}`;
};

function structure(document: Document, at: (offset: number) => Place): readonly TextProblem[] {
  const found: TextProblem[] = [];
  let aliases = 0;
  visit(document, (_, node, path) => {
    const place = () => at((node as Node).range?.[0] ?? 0);
    if (isAlias(node)) {
      aliases += 1;
      if (aliases === MOST_ALIASES + 1)
        found.push(problem('aliases', `more than ${MOST_ALIASES} aliases`, place(), 'Write the values out'));
    }
    if (isPair(node) && isScalar(node.key) && node.key.value === '<<') {
      const start = node.key.range?.[0] ?? 0;
      found.push(problem('merge-key', 'merge keys (<<) are not read', at(start), 'Write the values out'));
    }
    if (path.filter((n) => !isPair(n)).length > DEEPEST) {
      found.push(problem('too-deep', `nested more than ${DEEPEST} deep`, place()));
      return visit.BREAK;
    }
    return undefined;
  });
  return found;
}

function plainData(document: Document): unknown {
  try {
    return document.toJS({ maxAliasCount: MOST_ALIASES });
  } catch (error) {
    return refuse(
      'aliases',
      sentence(error instanceof Error ? error.message : String(error)),
      'Write the values out',
    );
  }
}

/** Offset of the deepest value on the path that the text has; of its key when the key is at fault. */
function offsetOf(document: Document, path: Path, what: 'key' | 'value'): number {
  let node: unknown = document.contents;
  let offset = start(node) ?? 0;
  for (const [i, step] of path.entries()) {
    if (isAlias(node)) node = node.resolve(document);
    const pair = isMap(node)
      ? node.items.find((item) => isScalar(item.key) && String(item.key.value) === String(step))
      : undefined;
    const next: unknown =
      pair === undefined
        ? (node as { get?: (k: unknown, keep: boolean) => unknown } | null)?.get?.(step, true)
        : pair.value;
    if (pair === undefined && next === undefined) break;
    const key = i === path.length - 1 && what === 'key' ? start(pair?.key) : undefined;
    offset = key ?? start(next) ?? start(pair?.key) ?? offset;
    node = next;
  }
  return offset;
}

const start = (node: unknown): number | undefined => (node as Node | null | undefined)?.range?.[0];
