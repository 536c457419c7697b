import { existsSync } from 'node:fs';
import { opendir } from 'node:fs/promises';
import { join } from 'node:path';
import { many } from '../host/console.js';

/** Folders of sizes in a folder. */
export async function foldersIn(out: string): Promise<number> {
  let count = 0;
  for await (const entry of await opendir(out))
    if (entry.isDirectory() && existsSync(join(out, entry.name, 'job.json'))) count += 1;
  return count;
}

/** What nobody may take for a size of the table. */
export const leftText = (out: string, left: number): string =>
  `${out} still holds ${many(left, 'size')} of an earlier run that no row makes now: do not cut from such a folder, delete it.\n`;
