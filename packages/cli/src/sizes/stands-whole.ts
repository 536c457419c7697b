import { join } from 'node:path';
import { DISK } from '../write/disk.js';
import { listsIn } from '../write/files.js';

/** Does a folder hold a set with all that its list names, nothing of it empty? A power cut or a user can take what was made. */
export async function standsWhole(folder: string): Promise<boolean> {
  const list = (await listsIn(DISK, folder)).get('job.json');
  if (list === undefined) return false;
  for (const name of list.files) {
    const file = await DISK.look(join(folder, name));
    if (file?.kind !== 'file' || file.size === 0) return false;
  }
  return true;
}
