import { link as hardLink, open, readFile, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { WriteError } from './failure.js';

/**
 * Keep a second run off a folder: a file beside it with this process's number, until the returned function is
 * called. A file left by a process that is gone does not count.
 * @param link makes a second name for a file; fails where the disk has no such thing
 * @throws WriteError while another run holds it
 */
export async function lockBeside(
  target: string,
  folder: string,
  link: (from: string, to: string) => Promise<void> = hardLink,
): Promise<() => Promise<void>> {
  const path = join(dirname(target), `.${basename(target)}.tinwright-lock`);
  for (let tries = 0; tries < 3; tries++) {
    if (await claimed(path, link)) return () => rm(path, { force: true });
    if (await isHeld(path)) break;
    await rm(path, { force: true });
  }
  throw new WriteError(folder, 'is being written by another run. Wait for it, or choose another folder');
}

/** Puts the lock in place, with its content from the start: false when there is one. */
async function claimed(path: string, link: (from: string, to: string) => Promise<void>): Promise<boolean> {
  const own = `${path}-${process.pid}`;
  try {
    await numbered(own, 'w');
    await link(own, path);
    return true;
  } catch (error) {
    const { code, syscall } = error as NodeJS.ErrnoException;
    if (code === 'EEXIST') return false;
    if (syscall !== 'link') throw error;
    return created(path); // no second names here
  } finally {
    await rm(own, { force: true });
  }
}

/** Where there are no links the lock is there a moment before its content. */
async function created(path: string): Promise<boolean> {
  try {
    await numbered(path, 'wx');
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

/** A file with the number of this process; not there when it cannot be written. */
async function numbered(path: string, flag: 'w' | 'wx'): Promise<void> {
  const handle = await open(path, flag);
  try {
    await handle.writeFile(String(process.pid));
  } catch (error) {
    await rm(path, { force: true });
    throw error;
  } finally {
    await handle.close();
  }
}

async function isHeld(path: string): Promise<boolean> {
  const owner = Number(await contentOf(path));
  if (!Number.isInteger(owner) || owner <= 0) return false;
  try {
    process.kill(owner, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM'; // it runs, as somebody else
  }
}

const PATIENCE = 10;
const MOMENT = 30; // ms

/** What the lock holds, once its owner has had the time to write it. */
async function contentOf(path: string): Promise<string> {
  const read = () => readFile(path, 'utf8').catch(() => '0');
  let content = await read();
  for (let i = 0; i < PATIENCE && content === ''; i++) {
    await setTimeout(MOMENT);
    content = await read();
  }
  return content;
}
