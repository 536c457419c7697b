import { open, readFile, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { WriteError } from './failure.js';

/**
 * Keep a second run off a folder: a file beside it with this process's number, until the returned function is
 * called. A file left by a process that is gone does not count.
 * @throws WriteError while another run holds it
 */
export async function lockBeside(target: string, folder: string): Promise<() => Promise<void>> {
  const path = join(dirname(target), `.${basename(target)}.tinwright-lock`);
  for (let tries = 0; tries < 3; tries++) {
    try {
      const handle = await open(path, 'wx');
      await handle.writeFile(String(process.pid));
      await handle.close();
      return () => rm(path, { force: true });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
      if (await isHeld(path)) break;
      await rm(path, { force: true });
    }
  }
  throw new WriteError(folder, 'is being written by another run. Wait for it, or choose another folder');
}

async function isHeld(path: string): Promise<boolean> {
  const owner = Number(await readFile(path, 'utf8').catch(() => '0'));
  if (!Number.isInteger(owner) || owner <= 0) return false;
  try {
    process.kill(owner, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM'; // it runs, as somebody else
  }
}
