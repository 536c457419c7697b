import {
  chmod,
  cp,
  mkdir,
  open,
  readdir,
  readFile,
  realpath,
  rename,
  rm,
  rmdir,
  stat,
} from 'node:fs/promises';
import { basename, dirname, join, relative, resolve } from 'node:path';
import type { OutFile } from '@tinwright/files';
import { WriteError } from './failure.js';
import { exists, kindOf } from './file-kind.js';
import { lockBeside } from './lock.js';

/** Each lists the files of a set, so that the next run knows which ones it may replace. Sets of several share a folder. */
const LISTS = ['job.json', 'plans.json', 'templates.json', 'strip.json', 'packet.json'];

/**
 * Write a set of files as a folder that appears complete or not at all: into a sibling folder first, synced, then
 * swapped in. A folder that was not written by this command is left alone; files somebody added to an old set stay.
 * @throws WriteError, with the old set whole
 */
export async function writeSet(folder: string, files: readonly OutFile[]): Promise<void> {
  await explained(folder, async () => {
    const target = await real(folder);
    const inside = relative(target, process.cwd());
    if (!inside.startsWith('..') && inside !== process.cwd())
      throw new WriteError(folder, 'would be replaced under your feet. Choose a folder below this one');
    const parent = await mkdir(dirname(target), { recursive: true });
    try {
      const release = await lockBeside(target, folder);
      try {
        await write(target, folder, files);
      } finally {
        await release();
      }
    } catch (error) {
      if (parent !== undefined) await removeEmpty(dirname(target), parent);
      throw error;
    }
  });
}

/** Write one file, whole or not at all. @throws WriteError, with an old file whole */
export async function writeOne(path: string, content: string | Uint8Array): Promise<void> {
  await explained(path, async () => {
    if ((await kindOf(path)) === 'folder') throw new WriteError(path, 'is a folder. Name a file in it');
    const fresh = join(dirname(resolve(path)), `.${basename(path)}.tinwright-new`);
    try {
      await rm(fresh, { force: true });
      await fill(dirname(fresh), [{ path: basename(fresh), content }]);
      await rename(fresh, resolve(path));
    } finally {
      await rm(fresh, { force: true });
    }
  });
}

async function explained(place: string, work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (error instanceof WriteError) throw error;
    const { code, message } = error as NodeJS.ErrnoException;
    const why = REASONS[code ?? ''] ?? `the system says ${code ?? message}`;
    throw new WriteError(place, `cannot be written: ${why}. Nothing was changed`);
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EFBIG: 'a file would be larger than allowed',
  EACCES: 'the place is read-only for you',
  EPERM: 'the place is read-only for you',
  EROFS: 'the place is read-only',
  ENOTDIR: 'part of the path is a file',
  EEXIST: 'part of the path is a file',
  ENOENT: 'part of the path is not there',
  ENAMETOOLONG: 'the name is too long',
  EISDIR: 'it is a folder',
};

/** A link to a folder stays a link: its target is what gets swapped. */
async function real(folder: string): Promise<string> {
  const kind = await kindOf(folder);
  if (kind === 'file') throw new WriteError(folder, 'is a file. Choose another folder with --out');
  if (kind === 'dead link')
    throw new WriteError(folder, 'is a link that leads nowhere. Choose another folder with --out');
  return kind === 'folder' ? realpath(folder) : resolve(folder);
}

async function write(target: string, folder: string, files: readonly OutFile[]): Promise<void> {
  const sibling = (what: string) => join(dirname(target), `.${basename(target)}.tinwright-${what}`);
  const [fresh, old] = [sibling('new'), sibling('old')];
  if (!(await exists(target)) && (await exists(old))) await rename(old, target); // a run was cut off mid-swap
  const strangers = await strangersIn(
    target,
    folder,
    LISTS.filter((l) => files.some((f) => f.path === l)),
  );
  const taken = strangers.find((s) => files.some((f) => f.path === s));
  if (taken !== undefined)
    throw new WriteError(
      join(folder, taken),
      'is in the way and not from tinwright. Move it away, or choose another folder',
    );
  await rm(fresh, { recursive: true, force: true });
  try {
    await fill(fresh, files);
    for (const name of strangers)
      await cp(join(target, name), join(fresh, name), { recursive: true, verbatimSymlinks: true });
    await swap(fresh, target, old);
  } finally {
    await rm(fresh, { recursive: true, force: true });
  }
}

async function fill(folder: string, files: readonly OutFile[]): Promise<void> {
  const folders = new Set([folder, ...files.map((f) => dirname(join(folder, f.path)))]);
  for (const f of folders) await mkdir(f, { recursive: true });
  for (const { path, content } of files) {
    const handle = await open(join(folder, path), 'wx');
    try {
      await handle.writeFile(content);
      await handle.sync();
    } finally {
      await handle.close();
    }
  }
  for (const f of folders) await syncFolder(f);
}

async function swap(fresh: string, target: string, old: string): Promise<void> {
  await rm(old, { recursive: true, force: true });
  const replaced = await exists(target);
  if (replaced) {
    await chmod(fresh, (await stat(target)).mode);
    await rename(target, old);
  }
  try {
    await rename(fresh, target);
  } catch (error) {
    if (replaced) await rename(old, target);
    throw error;
  }
  await syncFolder(dirname(target));
  await rm(old, { recursive: true, force: true });
}

/** Files in the target, and folders with nothing in them, that are in none of these lists. */
async function strangersIn(
  target: string,
  folder: string,
  lists: readonly string[],
): Promise<readonly string[]> {
  if (!(await exists(target))) return [];
  const entries = await readdir(target, { recursive: true, withFileTypes: true });
  const names = entries.map((e) => relative(target, join(e.parentPath, e.name)).split('\\').join('/'));
  const leaves = names.filter(
    (n, i) => !entries[i]?.isDirectory() || !names.some((m) => m.startsWith(`${n}/`)),
  );
  if (leaves.length === 0) return [];
  const sets = await Promise.all(LISTS.map(async (list) => ({ list, files: await filesIn(target, list) })));
  if (sets.every((s) => s.files === null))
    throw new WriteError(folder, 'holds files that are not from tinwright. Choose another folder with --out');
  const own = new Set(sets.filter((s) => lists.includes(s.list)).flatMap((s) => s.files ?? []));
  return leaves.filter((n) => !own.has(n));
}

/** The files a list names, and the list itself; null when there is none of ours. */
async function filesIn(target: string, list: string): Promise<readonly string[] | null> {
  try {
    const read: unknown = JSON.parse(await readFile(join(target, list), 'utf8'));
    const { format, files } = read as { format?: unknown; files?: unknown };
    return format === 1 && Array.isArray(files) ? [list, ...files.map(String)] : null;
  } catch {
    return null;
  }
}

/** Take back folders that were made on the way: from `inner` up to `outer`, as long as they are empty. */
async function removeEmpty(inner: string, outer: string): Promise<void> {
  for (let path = inner; path.length >= outer.length; path = dirname(path)) {
    try {
      await rmdir(path);
    } catch {
      return; // not empty: somebody uses it
    }
  }
}

async function syncFolder(path: string): Promise<void> {
  if (process.platform === 'win32') return; // folders cannot be opened there
  const handle = await open(path, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}
