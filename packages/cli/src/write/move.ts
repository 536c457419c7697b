import { dirname, extname } from 'node:path';
import { codeOf, type Disk, type StandingFile } from './disk.js';

/**
 * Move a file, link or folder with its time and rights, never over something: where the new place is taken, the free
 * name nearest to it is used. Returns the place it got.
 */
export async function moveTo(disk: Disk, from: string, to: string): Promise<string> {
  const moved = await disk.look(from);
  if (moved === null) return to; // somebody was quicker
  await disk.makeFolder(dirname(to));
  for (let n = 0; ; n++) {
    const place = n === 0 ? to : besides(to, n);
    const there = await disk.look(place);
    if (there !== null && sameFile(there, moved)) {
      await disk.unlink(from); // a run was cut off between the two names
      return place;
    }
    if (there !== null) continue;
    if (await moveFree(disk, from, place, moved)) return place;
  }
}

/** `notes.txt` as `notes (kept 1).txt`. */
function besides(path: string, n: number): string {
  const end = extname(path);
  return `${path.slice(0, path.length - end.length)} (kept ${n})${end}`;
}

const sameFile = (a: StandingFile, b: StandingFile) =>
  a.kind === 'file' && b.kind === 'file' && a.inode === b.inode && a.device === b.device && a.inode !== 0;

const NO_LINKS = ['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK', 'EACCES', 'EXDEV'];

/** Moves to a place where nothing was; false when something is by now. */
async function moveFree(
  disk: Disk,
  from: string,
  place: string,
  { kind, mode }: StandingFile,
): Promise<boolean> {
  if (kind === 'folder') return moveFolder(disk, from, place, mode);
  if (kind === 'file')
    try {
      await disk.link(from, place); // fails where something stands, as a rename does not
      await disk.unlink(from);
      return true;
    } catch (error) {
      if (codeOf(error) === 'EEXIST') return false;
      if (!NO_LINKS.includes(codeOf(error)) || (await disk.look(place)) !== null) throw error;
    }
  await disk.rename(from, place);
  return true;
}

/** A folder its owner may not write to cannot be moved by the system as it is: it is opened for the move. */
async function moveFolder(disk: Disk, from: string, place: string, mode: number): Promise<boolean> {
  try {
    await disk.rename(from, place);
    return true;
  } catch (error) {
    if (['ENOTEMPTY', 'EEXIST'].includes(codeOf(error))) return false;
    if (!['EACCES', 'EPERM'].includes(codeOf(error)) || (mode & 0o200) !== 0) throw error;
  }
  await disk.setMode(from, mode | 0o700);
  try {
    await disk.rename(from, place);
  } catch (error) {
    await disk.setMode(from, mode & 0o7777);
    throw error;
  }
  await disk.setMode(place, mode & 0o7777);
  return true;
}
