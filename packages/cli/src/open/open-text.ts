import { JobError, type Path } from '@tinwright/core';
import type { Host } from '../host/console.js';
import { EXIT, type ExitCode, placedProblems, printProblems } from '../host/failure.js';
import type { CellPlace } from '../table/row.js';
import { textBytes } from '../text/file-bytes.js';
import { type ReadText, readText, TextError, type TextKind } from '../text/read-text.js';
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
    const data =
      kind === 'job'
        ? await withDrawings(text.data, file, (drawing) => host.inputs?.add(drawing))
        : text.data;
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
  if (file === STANDARD_INPUT) return host.stdin();
  host.inputs?.add(file);
  return textBytes(file, kind);
}
