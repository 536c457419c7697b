import { open, stat } from 'node:fs/promises';
import { LONGEST_TEXT, TextError, type TextKind } from './read-text.js';

/** What stands there is no file but a pipe or a device: reading it might never end. */
export class NoFileError extends Error {
  override readonly name = 'NoFileError';
  readonly code = 'ENOTFILE';
}

/** @throws NoFileError; whatever else is the matter is said by who opens it */
export async function checkFile(path: string): Promise<void> {
  const found = await stat(path);
  if (!found.isFile() && !found.isDirectory()) throw new NoFileError(`${path} is a pipe or a device`);
}

/** The first `most` bytes of a file, and how many it has. @throws NoFileError and what the file system says */
export async function firstBytes(
  path: string,
  most: number,
): Promise<{ readonly bytes: Uint8Array; readonly size: number }> {
  await checkFile(path);
  const handle = await open(path);
  try {
    const { size } = await handle.stat();
    const room = size > 0 ? Math.min(size, most) : Math.min(most, UNKNOWN); // what the kernel makes up has no size
    const buffer = Buffer.alloc(room);
    let length = 0;
    for (let read = -1; read !== 0 && length < room; length += read)
      ({ bytesRead: read } = await handle.read(buffer, length, room - length, length));
    return { bytes: buffer.subarray(0, length), size };
  } finally {
    await handle.close();
  }
}

const UNKNOWN = 64 * 1024; // bytes

/** What a text file says, as bytes. @throws TextError when there is nothing to read, or too much */
export async function textBytes(path: string, kind: TextKind): Promise<Uint8Array> {
  try {
    const { bytes, size } = await firstBytes(path, 2 * LONGEST_TEXT);
    if (size <= LONGEST_TEXT) return bytes;
    throw atStart('too-long', `a ${kind} file of ${size} bytes given, up to ${LONGEST_TEXT} allowed`);
  } catch (error) {
    throw error instanceof TextError ? error : atStart('unreadable', whyUnread(error, `a ${kind} file`));
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'the file may not be read',
};

/** Why a file cannot be read, in words. @param wanted what it should be @throws what was no failure of the system */
export function whyUnread(error: unknown, wanted: string): string {
  const { code } = error as NodeJS.ErrnoException;
  if (code === undefined) throw error;
  if (code === 'EISDIR') return `this is a folder, not ${wanted}`;
  if (code === 'ENOTFILE') return `this is a pipe or a device, not ${wanted}`;
  return REASONS[code] ?? `the file cannot be read (${code})`;
}

function atStart(code: string, message: string): TextError {
  return new TextError([{ code, path: [], message, fix: '', place: { line: 1, column: 1 } }]);
}
