import { lstat, mkdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { PROGRAM } from '@tinwright/core';
import type { OutFile } from '@tinwright/files';
import { writeSet } from '../../src/write/files.js';
import { below, emptyFolder } from '../place.js';
import { QUICK } from './faulty-disk.js';

/** A set as `make` writes it: these files, each holding its own path and `text`, and the list that names them. */
export function set(paths: readonly string[], text = ''): readonly OutFile[] {
  return [...paths.map((path) => ({ path, content: `${path}${text}` })), listOf('job.json', paths)];
}

/** A list of ours. */
export function listOf(path: string, files: readonly string[]): OutFile {
  return {
    path,
    content: JSON.stringify({ format: 1, program: PROGRAM.mark, parts: [], findings: [], files }),
  };
}

/** Plans of a part, as a set with a list of its own. */
export const plans = (name: string): readonly OutFile[] => [
  { path: `plans/${name}.pdf`, content: name },
  listOf('plans.json', [`plans/${name}.pdf`]),
];

export const TRAY: readonly OutFile[] = set(['parts/tray.dxf', 'parts/tray.svg']);
export const TRAY_FILES: readonly string[] = ['job.json', 'parts', 'parts/tray.dxf', 'parts/tray.svg'];
export const LID: readonly OutFile[] = set(['parts/lid.dxf']);
export const LID_FILES: readonly string[] = ['job.json', 'parts', 'parts/lid.dxf'];

/** A folder that a set stands in, and the set's own folder. */
export async function withSet(
  files: readonly OutFile[] = TRAY,
): Promise<{ readonly around: string; readonly out: string }> {
  const around = await emptyFolder();
  const out = join(around, 'out');
  await writeSet(out, files, { disk: QUICK, kept: { here: '/nowhere', home: '/nowhere' } });
  return { around, out };
}

/** Every file below a folder with its content. */
export async function content(folder: string): Promise<Readonly<Record<string, string>>> {
  const names = await below(folder);
  const pairs = await Promise.all(
    names.map(async (n): Promise<[string, string]> => {
      const path = join(folder, n);
      return [n, (await lstat(path)).isFile() ? await readFile(path, 'utf8') : ''];
    }),
  );
  return Object.fromEntries(pairs);
}

/** What a user put into the folder of a set, by path. */
export const THEIRS: Readonly<Record<string, string>> = {
  'notes.txt': 'rack 3',
  'parts/photo.jpg': 'of the tray',
  'photos/deep/a.jpg': 'a',
  'photos/b.jpg': 'b',
};

/** Saves what is the user's, and an empty folder, and a link. */
export async function saveTheirs(out: string): Promise<void> {
  for (const [path, text] of Object.entries(THEIRS)) {
    await mkdir(join(out, path, '..'), { recursive: true });
    await writeFile(join(out, path), text);
  }
  await mkdir(join(out, 'empty'));
  await symlink('notes.txt', join(out, 'link'));
}

/** The names of all that stands when a set and the user's own do. */
export const withTheirs = (files: readonly string[]): readonly string[] =>
  [...new Set([...files, ...Object.keys(THEIRS), 'photos', 'photos/deep', 'empty', 'link'])].toSorted();
