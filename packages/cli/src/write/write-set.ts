import { dirname, join } from 'node:path';
import type { OutFile } from '@tinwright/files';
import { WriteError } from '../host/failure.js';
import { codeOf, DISK, type Disk } from './disk.js';
import { locked, PATIENCE } from './lock.js';
import { listsIn, type OwnLists, ownList } from './own-lists.js';
import { type KeptFolders, keptFolders, placeOf } from './place-of.js';
import { told, unwritten } from './reason.js';
import { handOver, placesOf, type SettledPlaces, settle, swap } from './settle.js';
import { type StopHere, stoppable } from './stop.js';

/** The disk, and the folders that are never replaced; tests hand in their own. */
export interface Around {
  readonly disk: Disk;
  readonly kept: KeptFolders;
  /** Where somebody else hears them. */
  readonly signals?: 'not heard';
}

const around = (): Around => ({ disk: DISK, kept: keptFolders() });

/**
 * Write a set of files as a folder that appears complete or not at all: into a sibling folder first, synced, then
 * swapped in. One of the files is the set's list: it says what the next set may take away. All else that stands in the
 * folder is moved into the new one, also what is saved into it meanwhile. A folder with nothing of ours is left alone.
 * @throws WriteError that says what happened: with the old set whole, unless it says otherwise
 */
export async function writeSet(
  folder: string,
  files: readonly OutFile[],
  place: Around = around(),
): Promise<void> {
  await updateSet(folder, async () => files, place);
}

/**
 * Whether a set could be written as things stand: asked before work that takes long, and again when it is written.
 * @throws WriteError as `writeSet`
 */
export async function checkFolder(
  folder: string,
  also: (standing: OwnLists) => Promise<void> = async () => undefined,
  { disk, kept }: Around = around(),
): Promise<void> {
  await told(folder, unwritten, async () => {
    const target = await placeOf(disk, folder, kept);
    if ((await disk.look(placesOf(folder, target).old)) !== null) return; // what a run left comes back first
    const standing = await listsIn(disk, target);
    await refuseForeign(disk, folder, target, standing);
    await also(standing);
  });
}

/** @throws WriteError for a folder with files of the user's own and none of ours */
async function refuseForeign(disk: Disk, shown: string, target: string, standing: OwnLists): Promise<void> {
  if (standing.size === 0 && (await disk.look(target)) !== null && (await disk.names(target)).length > 0)
    throw new WriteError(shown, 'holds files that are not from tinwright. Choose another folder with --out');
}

/** The lists of the sets that stand in a folder. @throws WriteError where it cannot be read */
export async function setsIn(folder: string, { disk, kept }: Around = around()): Promise<OwnLists> {
  return await told(folder, unwritten, async () => listsIn(disk, await placeOf(disk, folder, kept)));
}

/** What is written in the place of sets that stand; null where they are as they should be. */
type FilesFor = (standing: OwnLists) => Promise<readonly OutFile[] | null>;

/**
 * The same for files that depend on the sets which stand there. What the new list names and is not among the new files
 * stays as it is.
 */
export async function updateSet(
  folder: string,
  files: FilesFor,
  { disk, kept, signals }: Around = around(),
): Promise<void> {
  await told(folder, unwritten, async () => {
    const target = await placeOf(disk, folder, kept);
    const made = await disk.makeFolder(dirname(target));
    try {
      const heard = signals === undefined ? stoppable : unstoppable;
      await heard(folder, (stopHere) =>
        told(
          folder,
          (why, error) => readOnlyAround(target, why, error),
          () =>
            locked(disk, { target, shown: folder, patience: PATIENCE.short }, () =>
              told(folder, unwritten, () => write(disk, placesOf(folder, target), files, stopHere)),
            ),
        ),
      );
    } catch (error) {
      if (made !== undefined) await removeEmpty(disk, dirname(target), made);
      throw error;
    }
  });
}

const unstoppable: typeof stoppable = (_, work) => work(() => undefined);

/** What cannot be put beside a folder cannot be put around it. */
function readOnlyAround(target: string, why: string, error: unknown): string {
  const readOnly = ['EACCES', 'EPERM', 'EROFS'].includes(codeOf(error));
  return unwritten(readOnly ? `the folder around it, ${dirname(target)}, is read-only for you` : why);
}

async function write(
  disk: Disk,
  places: SettledPlaces,
  filesFor: FilesFor,
  stopHere: StopHere,
): Promise<void> {
  const { shown, target, fresh } = places;
  await settle(disk, places);
  const standing = await listsIn(disk, target);
  await refuseForeign(disk, shown, target, standing);
  const files = await filesFor(standing);
  if (files === null) return;
  await refuseTaken(disk, places, files, standing);
  try {
    await fill(disk, fresh, files, stopHere);
    await sameModes(disk, places, files);
    stopHere();
    await swap(disk, places);
  } catch (error) {
    await disk.removeAll(fresh).catch(() => undefined); // the next run takes it away
    throw error;
  }
  const confirmed = sync(disk, dirname(target));
  await confirmed.catch(() => undefined); // told when all else is done
  await handOver(disk, places);
  await told(
    shown,
    (why) => `is written, but the disk does not confirm it: ${why}`,
    () => confirmed,
  );
}

/** @throws WriteError where something of the user's stands in the place of a new file */
async function refuseTaken(
  disk: Disk,
  { shown, target }: SettledPlaces,
  files: readonly OutFile[],
  standing: OwnLists,
): Promise<void> {
  const own = new Set(
    files.flatMap((f) => [...(ownList(f.path, f.content) ? (standing.get(f.path)?.files ?? []) : [])]),
  );
  const folders = new Set(foldersIn(files));
  for (const path of [...folders, ...files.map((f) => f.path)]) {
    const found = await disk.look(join(target, path));
    if (
      found === null ||
      (folders.has(path) ? found.kind === 'folder' : own.has(path) && found.kind !== 'folder')
    )
      continue;
    throw new WriteError(
      join(shown, path),
      'is in the way and not from tinwright. Move it away, or choose another folder',
    );
  }
}

/** Folders of files, outer ones first. */
function foldersIn(files: readonly OutFile[]): readonly string[] {
  const all = files.flatMap(({ path }) => {
    const steps = path.split('/').slice(0, -1);
    return steps.map((_, i) => steps.slice(0, i + 1).join('/'));
  });
  return [...new Set(all)];
}

async function fill(
  disk: Disk,
  folder: string,
  files: readonly OutFile[],
  stopHere: StopHere,
): Promise<void> {
  const folders = [folder, ...foldersIn(files).map((f) => join(folder, f))];
  for (const f of folders) await disk.makeFolder(f);
  for (const { path, content } of files) {
    stopHere();
    await disk.create(join(folder, path), content);
  }
  for (const f of folders) await sync(disk, f);
}

/** Rights that the user gave to a folder of the set stay. */
async function sameModes(
  disk: Disk,
  { target, fresh }: SettledPlaces,
  files: readonly OutFile[],
): Promise<void> {
  for (const f of foldersIn(files)) {
    const found = await disk.look(join(target, f));
    if (found?.kind === 'folder') await disk.setMode(join(fresh, f), (found.mode & 0o7777) | 0o700);
  }
}

/** Where the system does not let a folder be synced, its names go to the disk in their own time. */
async function sync(disk: Disk, folder: string): Promise<void> {
  await disk.sync(folder).catch((error) => {
    if (!['EACCES', 'EPERM', 'EINVAL', 'ENOTSUP'].includes(codeOf(error))) throw error;
  });
}

/** Take back folders that were made on the way: from `inner` up to `outer`, as long as they are empty. */
async function removeEmpty(disk: Disk, inner: string, outer: string): Promise<void> {
  for (let path = inner; path.length >= outer.length; path = dirname(path)) {
    try {
      await disk.removeFolder(path);
    } catch {
      return; // not empty: somebody uses it
    }
  }
}
