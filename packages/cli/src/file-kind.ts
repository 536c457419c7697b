import { lstat, stat } from 'node:fs/promises';

/** What stands at a path, links followed. */
export type FileKind = 'none' | 'file' | 'folder' | 'dead link';

export async function kindOf(path: string): Promise<FileKind> {
  const found = await orNull(stat(path));
  if (found !== null) return found.isDirectory() ? 'folder' : 'file';
  return (await orNull(lstat(path))) === null ? 'none' : 'dead link';
}

/** True when something stands at a path, links followed. */
export async function exists(path: string): Promise<boolean> {
  return (await orNull(stat(path))) !== null;
}

/** The result, null where nothing is there; other errors stay errors. */
async function orNull<T>(looked: Promise<T>): Promise<T | null> {
  try {
    return await looked;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
}
