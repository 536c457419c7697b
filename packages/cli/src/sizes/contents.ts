import { createHash } from 'node:crypto';
import { lstatSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ownList } from '../write/own-lists.js';

const LIST = 'job.json';

interface Content {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** Tells files of a set apart by names and contents, in whatever order they come: 16 hexadecimal digits. */
export function contentsMark(files: readonly Content[]): string {
  const hash = createHash('sha256');
  for (const { path, content } of files.toSorted((a, b) => (a.path < b.path ? -1 : 1)))
    hash.update(`\0${path}\0`).update(content);
  return hash.digest('hex').slice(0, 16);
}

/**
 * Does a folder hold a set with all that its list names, as it was made? A power cut or a user can change what stands.
 * Asked of thousands of sizes, so it reads without waiting in between, which takes a third of the time.
 */
export function standsAsMade(folder: string, mark: string): boolean {
  try {
    const list = ownList(LIST, readFileSync(join(folder, LIST), 'utf8'));
    if (list === null) return false;
    const files = [...list.files].map((path) => ({ path, file: join(folder, path) }));
    if (!files.every(({ file }) => lstatSync(file).isFile())) return false;
    return contentsMark(files.map(({ path, file }) => ({ path, content: readFileSync(file) }))) === mark;
  } catch {
    return false; // what cannot be read is made again, or the disk says why it cannot be
  }
}
