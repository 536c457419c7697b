import { relative, sep } from 'node:path';
import { WriteError } from '../host/failure.js';
import { DISK } from './disk.js';
import type { OwnList } from './own-lists.js';

/** Files that a run has read so far, as they were named. */
export type Inputs = ReadonlySet<string> | undefined;

/**
 * What a run reads it does not write over, by force neither: a job, a rack, a shop, a drawing, a module.
 * @throws WriteError for a file that is one of them, links followed
 */
export async function refuseInput(inputs: Inputs, path: string): Promise<void> {
  const target = await realPath(path);
  for (const input of inputs ?? [])
    if (target !== null && target === (await realPath(input)))
      throw new WriteError(path, 'is what this is made of. Name another file. Nothing was changed');
}

/** The same for the files of a set that is replaced. @throws WriteError as `refuseInput` */
export async function refuseInputsIn(inputs: Inputs, out: string, list: OwnList | undefined): Promise<void> {
  const folder = await realPath(out);
  if (folder === null || list === undefined) return;
  for (const input of inputs ?? []) {
    const inside = relative(folder, (await realPath(input)) ?? folder)
      .split(sep)
      .join('/');
    if (list.files.has(inside))
      throw new WriteError(
        out,
        `holds ${inside}, of which this is made, among files that would be replaced. Choose another folder with --out. Nothing was changed`,
      );
  }
}

const realPath = (path: string) => DISK.realPath(path).catch(() => null);
