import { basename, dirname, join, resolve } from 'node:path';
import { WriteError } from '../host/failure.js';
import { codeOf, DISK, type Disk, type StandingFile } from './disk.js';
import { locked, PATIENCE } from './lock.js';
import { isOwnFile } from './own-file.js';
import { told, unwritten } from './reason.js';
import { stoppable } from './stop.js';

type Content = string | Uint8Array;

/**
 * Write one file, whole or not at all. One that this program did not write is replaced only by force.
 * @throws WriteError, with an old file whole
 */
export async function replaceFile(
  path: string,
  content: Content,
  force: 'force' | 'own only' = 'own only',
  disk: Disk = DISK,
): Promise<void> {
  await withFile({ path, patience: PATIENCE.short, disk }, async (target, found) => {
    await mayReplace(disk, { path, target, found }, force);
    await put(disk, { path, target, found }, content);
  });
}

/**
 * Whether a file could be written as things stand: asked before work that takes long, and again when it is written.
 * @throws WriteError as `replaceFile`
 */
export async function checkPlace(
  path: string,
  force: 'force' | 'own only' = 'own only',
  disk: Disk = DISK,
): Promise<void> {
  await told(path, unwritten, async () => {
    const target = await targetOf(disk, path);
    await mayReplace(disk, { path, target, found: await disk.look(target) }, force);
  });
}

/** @throws WriteError for a file of the user's own, unless it is to be replaced by force */
async function mayReplace(
  disk: Disk,
  { path, target, found }: Place,
  force: 'force' | 'own only',
): Promise<void> {
  if (found !== null && force === 'own only' && !isOwnFile(await disk.read(target)))
    throw new WriteError(
      path,
      'is there and not as tinwright wrote it. Name another file, or give --force to replace it',
    );
}

/**
 * Change a file that is there: what was read is what gets replaced, other runs wait meanwhile.
 * @param change the new content, or null to leave it
 * @throws WriteError, with the old file whole
 */
export async function changeFile(
  path: string,
  change: (content: Uint8Array) => Promise<Content | null>,
  disk: Disk = DISK,
): Promise<void> {
  await withFile({ path, patience: PATIENCE.long, disk }, async (target, found) => {
    const content = await change(await disk.read(target));
    if (content !== null) await put(disk, { path, target, found }, content);
  });
}

/** Write a file for somebody to fill in, where there is none yet. @throws WriteError */
export async function startFile(path: string, content: Content, disk: Disk = DISK): Promise<void> {
  await withFile({ path, patience: PATIENCE.long, disk }, async (target, found) => {
    if (found === null) await put(disk, { path, target, found }, content);
  });
}

/** A file that was looked at while no other run writes it. A link stays one: its target counts. */
async function withFile(
  { path, patience, disk }: { readonly path: string; readonly patience: number; readonly disk: Disk },
  work: (target: string, found: StandingFile | null) => Promise<void>,
): Promise<void> {
  await told(path, unwritten, async () => {
    const target = await targetOf(disk, path);
    await stoppable(path, () =>
      locked(disk, { target, shown: path, patience }, async () => work(target, await disk.look(target))),
    );
  });
}

/** Where a file goes, links followed. @throws WriteError where none can stand */
async function targetOf(disk: Disk, path: string): Promise<string> {
  const link = (await disk.look(path))?.kind === 'link';
  const through = await disk.lookThrough(path);
  if (link && through === null) throw new WriteError(path, 'is a link that leads nowhere. Name another file');
  if (through?.kind === 'folder') throw new WriteError(path, 'is a folder. Name a file in it');
  if (through !== null && through.kind !== 'file')
    throw new WriteError(path, 'is not a file. Name another one');
  return link ? disk.realPath(path) : resolve(path);
}

interface Place {
  readonly path: string;
  readonly target: string;
  readonly found: StandingFile | null;
}

async function put(disk: Disk, { path, target, found }: Place, content: Content): Promise<void> {
  const fresh = join(dirname(target), `.${basename(target)}.tinwright-new`);
  await disk.removeAll(fresh);
  try {
    await disk.create(fresh, content);
    if (found === null) await putNew(disk, { path, target, found }, fresh);
    else {
      await disk.setMode(fresh, found.mode & 0o7777);
      const now = await disk.look(target);
      if (now?.inode !== found.inode || now.time !== found.time || now.size !== found.size)
        throw new WriteError(
          path,
          'was changed by another program meanwhile. Run it again. Nothing was changed',
        );
      await disk.rename(fresh, target);
    }
  } finally {
    await disk.removeAll(fresh).catch(() => undefined); // the next run takes it away
  }
  await told(
    path,
    (why) => `is written, but the disk does not confirm it: ${why}`,
    () =>
      disk.sync(dirname(target)).catch((error) => {
        if (!['EACCES', 'EPERM', 'EINVAL', 'ENOTSUP'].includes(codeOf(error))) throw error;
      }),
  );
}

/** Puts a file where none is; one that came meanwhile is not replaced. */
async function putNew(disk: Disk, { path, target }: Place, fresh: string): Promise<void> {
  try {
    await disk.link(fresh, target);
  } catch (error) {
    if (codeOf(error) !== 'EEXIST' && (await disk.look(target)) === null) return disk.rename(fresh, target);
    throw new WriteError(path, 'was made by another program meanwhile. Run it again. Nothing was changed');
  }
}
