import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import type { OutFile } from '@tinwright/files';
import { placesOf } from './settle.js';

/**
 * Write a set of files as a folder where none stands, in few steps and without waiting for the disk: filled beside its
 * place, then put there. For many small sets that are easily made again; a run that is killed leaves what `updateSet`
 * clears.
 * @returns false when something stands there or the disk refuses: nothing was changed, and `updateSet` says why
 */
export function writeFresh(folder: string, files: readonly OutFile[]): boolean {
  const { target, fresh, old } = placesOf(folder, resolve(folder));
  if (existsSync(target) || existsSync(old) || existsSync(fresh)) return false;
  try {
    mkdirSync(fresh, { recursive: true });
    for (const inner of new Set(files.map((f) => dirname(f.path))))
      if (inner !== '.') mkdirSync(join(fresh, inner), { recursive: true });
    for (const { path, content } of files) writeFileSync(join(fresh, path), content, { flag: 'wx' });
    renameSync(fresh, target);
    return true;
  } catch {
    rmSync(fresh, { recursive: true, force: true });
    return false;
  }
}
