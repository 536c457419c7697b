import { homedir } from 'node:os';
import { dirname, join, relative, resolve } from 'node:path';
import { WriteError } from '../host/failure.js';
import type { Disk, StandingFile } from './disk.js';

/** Folders that are never replaced, nor any that holds them: the one the program runs in, and the user's own. */
export interface KeptFolders {
  readonly here: string;
  readonly home: string;
}

export const keptFolders = (): KeptFolders => ({ here: process.cwd(), home: homedir() });

/**
 * The folder that a set goes to, links followed: a link to a folder stays a link, its target is what gets replaced.
 * @throws WriteError where none can be put, before anything in it was looked at
 */
export async function placeOf(disk: Disk, folder: string, { here, home }: KeptFolders): Promise<string> {
  const found = await folderAt(disk, folder);
  const target = found === null ? resolve(folder) : await disk.realPath(folder);
  const homeReal = await disk.realPath(home).catch(() => home);
  if (holds(target, homeReal))
    throw new WriteError(folder, 'is your home folder, or holds it. Choose a folder below it');
  if (holds(target, here))
    throw new WriteError(folder, 'would be replaced under your feet. Choose a folder below this one');
  const around = found === null ? null : await disk.look(dirname(target));
  if (found !== null && around !== null && found.device !== around.device)
    throw new WriteError(
      folder,
      `is a mount point and cannot be replaced. Choose a folder in it, such as ${join(folder, 'set')}`,
    );
  return target;
}

/**
 * The folder that stands there, links followed; null where there is nothing yet.
 * @throws WriteError where something else stands
 */
export async function folderAt(disk: Disk, folder: string): Promise<StandingFile | null> {
  const found = await disk.lookThrough(folder);
  // what is no link has come to stand there since, from another run
  if (found === null && (await disk.look(folder))?.kind === 'link')
    throw new WriteError(folder, 'is a link that leads nowhere. Choose another folder with --out');
  if (found !== null && found.kind !== 'folder')
    throw new WriteError(
      folder,
      `is a ${found.kind === 'file' ? 'file' : 'pipe or a device'}. Choose another folder with --out`,
    );
  return found;
}

/** True when one folder is the other or lies around it. */
function holds(outer: string, inner: string): boolean {
  const way = relative(outer, inner);
  return !way.startsWith('..') && !(way !== '' && resolve(way) === way);
}
