import { open } from 'node:fs/promises';
import { JobError, type Path } from '@tinwright/core';
import type { Host } from '../host/console.js';
import { EXIT, type ExitCode, placedProblems, printProblems } from '../host/failure.js';
import type { CellPlace } from '../table/row.js';
import { LONGEST_TEXT, type ReadText, readText, TextError, type TextKind } from '../text/read-text.js';
import { withDrawings } from './with-drawings.js';

/** What was computed from a file, or the exit status after its problems were printed. */
export type Opened<T> = { readonly answer: T } | { readonly exit: ExitCode };

/** Stands for `-`, standard input, which the argument parser would take for an option without a name. */
export const STANDARD_INPUT = '(standard input)';

/** Where a value stands in a text, from 1. */
export type Locate = (path: Path) => CellPlace;

/** Compute something from what a file or standard input says; problems are printed with their places. */
export async function withText<T>(
  host: Host,
  file: string,
  kind: TextKind,
  json: boolean,
  compute: (data: unknown, bytes: Uint8Array, locate: Locate) => T | Promise<T>,
): Promise<Opened<T>> {
  let text: ReadText | null = null;
  try {
    const bytes = await bytesOf(host, file, kind);
    text = readText(bytes, kind);
    const data = kind === 'job' ? await withDrawings(text.data, file) : text.data;
    const { locate } = text;
    return { answer: await compute(data, bytes, (path) => locate({ path })) };
  } catch (error) {
    if (!(error instanceof JobError) && !(error instanceof TextError)) throw error;
    printProblems(host, placedProblems(error, file, text), json);
    return { exit: EXIT.unreadable };
  }
}

/** What a file says, as bytes. @throws TextError when there is nothing to read */
export async function bytesOf(host: Host, file: string, kind: TextKind): Promise<Uint8Array> {
  try {
    return file === STANDARD_INPUT ? await host.stdin() : await readStart(file, kind);
  } catch (error) {
    throw error instanceof TextError ? error : unreadable(error, kind);
  }
}

/** The file's bytes, but not much more than it may have. */
async function readStart(path: string, kind: TextKind): Promise<Uint8Array> {
  const handle = await open(path);
  try {
    const { size } = await handle.stat();
    const buffer = Buffer.alloc(Math.min(Math.max(size, 64 * 1024), 2 * LONGEST_TEXT));
    const { bytesRead } = await handle.read(buffer, 0, buffer.length, 0);
    if (size > LONGEST_TEXT)
      throw atStart('too-long', `a ${kind} file of ${size} bytes given, up to ${LONGEST_TEXT} allowed`);
    return buffer.subarray(0, bytesRead);
  } finally {
    await handle.close();
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'the file may not be read',
};

function unreadable(error: unknown, kind: TextKind): TextError {
  const { code } = error as NodeJS.ErrnoException;
  if (code === undefined) throw error;
  if (code === 'EISDIR') return atStart('unreadable', `this is a folder, not a ${kind} file`);
  return atStart('unreadable', REASONS[code] ?? `the file cannot be read (${code})`);
}

function atStart(code: string, message: string): TextError {
  return new TextError([{ code, path: [], message, fix: '', place: { line: 1, column: 1 } }]);
}
