import { cp, mkdir, open, readdir, readFile, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import type { OutFile } from '@tinwright/export';
import { WriteError } from './failure.js';

/** Lists the files of a set, so that the next run knows which ones it may replace. */
const MANIFEST = 'job.json';

/**
 * Write a set of files as a folder that appears complete or not at all: into a sibling folder first, synced, then
 * swapped in. A folder that was not written by this command is left alone; files somebody added to an old set stay.
 * @throws WriteError, with the old set whole
 */
export async function writeSet(folder: string, files: readonly OutFile[]): Promise<void> {
  await explained(folder, async () => write(await real(resolve(folder)), files));
}

/** Write one file, whole or not at all. @throws WriteError, with an old file whole */
export async function writeOne(path: string, content: string | Uint8Array): Promise<void> {
  await explained(path, async () => {
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
    const why = REASONS[code ?? ''] ?? code ?? message;
    throw new WriteError(`${place}: cannot be written: ${why}. Nothing was changed`);
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
};

/** A link to a folder stays a link: its target is what gets swapped. */
async function real(path: string): Promise<string> {
  return (await exists(path)) ? realpath(path) : path;
}

async function write(target: string, files: readonly OutFile[]): Promise<void> {
  const sibling = (what: string) => join(dirname(target), `.${basename(target)}.tinwright-${what}`);
  const [fresh, old] = [sibling('new'), sibling('old')];
  await mkdir(dirname(target), { recursive: true });
  if (!(await exists(target)) && (await exists(old))) await rename(old, target); // a run was cut off mid-swap
  const strangers = await strangersIn(target);
  await rm(fresh, { recursive: true, force: true });
  try {
    await fill(fresh, files);
    for (const name of strangers) await cp(join(target, name), join(fresh, name), { recursive: true });
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
  if (replaced) await rename(target, old);
  try {
    await rename(fresh, target);
  } catch (error) {
    if (replaced) await rename(old, target);
    throw error;
  }
  await syncFolder(dirname(target));
  await rm(old, { recursive: true, force: true });
}

/** Top-level entries and files in the target that no run of ours wrote. */
async function strangersIn(target: string): Promise<readonly string[]> {
  if (!(await exists(target))) return [];
  if (!(await stat(target)).isDirectory())
    throw new WriteError(`${target}: is a file. Choose another folder with --out`);
  const entries = (await readdir(target, { recursive: true, withFileTypes: true })).filter(
    (e) => !e.isDirectory(),
  );
  if (entries.length === 0) return [];
  const known = await ownFiles(target);
  if (known === null)
    throw new WriteError(
      `${target}: holds files that are not from tinwright. Choose another folder with --out`,
    );
  const names = entries.map((e) =>
    join(e.parentPath, e.name)
      .slice(target.length + 1)
      .split('\\')
      .join('/'),
  );
  return names.filter((n) => !known.has(n));
}

async function ownFiles(target: string): Promise<ReadonlySet<string> | null> {
  try {
    const manifest: unknown = JSON.parse(await readFile(join(target, MANIFEST), 'utf8'));
    const { format, files } = manifest as { format?: unknown; files?: unknown };
    return format === 1 && Array.isArray(files) ? new Set([MANIFEST, ...files.map(String)]) : null;
  } catch {
    return null;
  }
}

async function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return false;
      throw error;
    },
  );
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
