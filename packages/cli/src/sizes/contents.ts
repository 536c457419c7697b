import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { DISK } from '../write/disk.js';
import { listsIn } from '../write/files.js';

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

/** Does a folder hold a set with all that its list names, as it was made? A power cut or a user can change what stands. */
export async function standsAsMade(folder: string, mark: string): Promise<boolean> {
  const list = (await listsIn(DISK, folder)).get('job.json');
  if (list === undefined) return false;
  const files: Content[] = [];
  for (const path of list.files) {
    if ((await DISK.look(join(folder, path)))?.kind !== 'file') return false;
    files.push({ path, content: await DISK.read(join(folder, path)) });
  }
  return contentsMark(files) === mark;
}
