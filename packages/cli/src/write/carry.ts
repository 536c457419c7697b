import { join } from 'node:path';
import { codeOf, type Disk } from './disk.js';
import { moveTo } from './move.js';

const ROUNDS = 20; // somebody may save into a folder as long as it stands

/** What is taken away rather than moved: paths with forward slashes. */
export type Gone = ReadonlySet<string>;

/**
 * Move all that stands in one folder over to another and take the emptied one away; files in `gone` are deleted, those
 * in `last` of them at the end. Folders that nothing is gone from are moved as they are.
 */
export async function carry(
  disk: Disk,
  { from, to }: { readonly from: string; readonly to: string },
  gone: Gone,
  last: Gone = new Set(),
): Promise<void> {
  const inner = new Set([...gone].flatMap(foldersOf));
  const mode = (await disk.look(from))?.mode;
  await opened(disk, from);

  async function pour(folder: string): Promise<void> {
    for (const name of await disk.names(join(from, folder))) {
      const path = folder === '' ? name : `${folder}/${name}`;
      if (last.has(path)) continue;
      if (gone.has(path)) await disk.unlink(join(from, path));
      else await pourOne(path);
    }
  }

  async function pourOne(path: string): Promise<void> {
    const [source, place] = [join(from, path), join(to, path)];
    const moved = await disk.look(source);
    const there = await disk.look(place);
    const merges =
      moved?.kind === 'folder' && (there?.kind === 'folder' || (there === null && inner.has(path)));
    if (!merges) {
      await moveTo(disk, source, place);
      return;
    }
    await opened(disk, source);
    if (there === null) await purge(path);
    else {
      await pour(path);
      await disk.setMode(place, moved.mode & 0o7777);
    }
    if ((await emptied(disk, source)) || (await disk.look(place)) !== null) return; // the next round sees what came
    await disk.setMode(await moveTo(disk, source, place), moved.mode & 0o7777);
  }

  /** Deletes what is gone from a folder, and what is empty then. */
  async function purge(folder: string): Promise<void> {
    for (const name of await disk.names(join(from, folder))) {
      const path = `${folder}/${name}`;
      if (gone.has(path)) await disk.unlink(join(from, path));
      else if (inner.has(path) && (await disk.look(join(from, path)))?.kind === 'folder') {
        await opened(disk, join(from, path));
        await purge(path);
        await emptied(disk, join(from, path));
      }
    }
  }

  for (let round = 0; round < ROUNDS; round++) {
    await pour('');
    for (const name of last) await disk.unlink(join(from, name)).catch(ignoring('ENOENT'));
    if (await emptied(disk, from)) {
      if (mode !== undefined) await disk.setMode(to, mode & 0o7777);
      return;
    }
  }
  await disk.removeFolder(from); // fails, and says why
}

/** Makes sure that names in a folder can be changed. */
async function opened(disk: Disk, folder: string): Promise<void> {
  const found = await disk.look(folder);
  if (found !== null && (found.mode & 0o700) !== 0o700)
    await disk.setMode(folder, (found.mode & 0o7777) | 0o700);
}

/** Takes a folder away if it is empty; false when something is in it. */
async function emptied(disk: Disk, folder: string): Promise<boolean> {
  try {
    await disk.removeFolder(folder);
    return true;
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return true;
    if (['ENOTEMPTY', 'EEXIST'].includes(codeOf(error))) return false;
    throw error;
  }
}

const ignoring = (code: string) => (error: unknown) => {
  if (codeOf(error) !== code) throw error;
};

/** `a/b/c.dxf`: `a`, `a/b`. */
function foldersOf(path: string): readonly string[] {
  const steps = path.split('/').slice(0, -1);
  return steps.map((_, i) => steps.slice(0, i + 1).join('/'));
}
