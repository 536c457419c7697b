import { WriteError } from '../host/failure.js';
import { codeOf } from './disk.js';

const REASONS: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EFBIG: 'a file would be larger than allowed',
  EACCES: 'the place is read-only for you',
  EPERM: 'the place is read-only for you',
  EROFS: 'the place is read-only',
  EBUSY: 'it is a mount point, or a program holds it',
  EXDEV: 'it stands on another disk',
  ENOTDIR: 'part of the path is a file',
  EEXIST: 'part of the path is a file',
  ENOENT: 'part of the path is not there',
  ENAMETOOLONG: 'the name is too long',
  EISDIR: 'it is a folder',
  EIO: 'the disk failed',
};

/** Why the system refused, in words. */
export function reason(error: unknown): string {
  const code = codeOf(error);
  const [said] = String((error as Error | null)?.message ?? error).split('\n');
  return REASONS[code] ?? `the system says ${code === '' ? said : code}`;
}

/** What is said where nothing was changed. */
export const unwritten = (why: string): string => `cannot be written: ${why}. Nothing was changed`;

/** Do some work; when the system refuses, tell what became of the place. Refusals of ours go through as they are. */
export async function told<T>(
  place: string,
  says: (why: string, error: unknown) => string,
  work: () => Promise<T>,
): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof WriteError) throw error;
    throw new WriteError(place, says(reason(error), error));
  }
}
