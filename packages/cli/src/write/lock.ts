import { randomBytes } from 'node:crypto';
import { readFileSync, readlinkSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { WriteError } from '../host/failure.js';
import { codeOf, type Disk } from './disk.js';

/** How long a second run waits, ms. */
export const PATIENCE: { readonly short: number; readonly long: number } = { short: 2000, long: 20_000 };

const BEAT = 10_000; // ms
const SILENCE = 60_000; // ms without a beat, after which a run on another machine is taken for dead
const PAUSE = { first: 10, withdrawn: 80 } as const; // ms: who withdrew leaves the others time to see it

/**
 * Do some work on a file or folder while no other run does.
 *
 * Each run puts a file of its own beside the place, whose name says who it is, then looks for others. Alone, it holds
 * the place; where one with a smaller name is, it withdraws; where larger ones are, it waits for those to withdraw or
 * to end. No name comes twice, so what a dead run left is removed without a chance to hit a living one.
 * @param shown the place as the user gave it
 * @throws WriteError that names the other run's file, once patience is at its end
 */
export async function locked<T>(
  disk: Disk,
  { target, shown, patience }: { readonly target: string; readonly shown: string; readonly patience: number },
  work: () => Promise<T>,
): Promise<T> {
  const folder = dirname(target);
  const prefix = `.${basename(target)}.tinwright-lock-`;
  const own = `${prefix}${OWNER.process}-${randomBytes(6).toString('hex')}-${OWNER.machine}`;
  const path = join(folder, own);
  const end = Date.now() + patience;
  const release = () => disk.unlink(path).catch(() => undefined); // what stays is of a run that ended
  for (;;) {
    await disk.create(path, '').catch((error) => {
      if (codeOf(error) !== 'EEXIST') throw error;
    });
    let others: readonly string[];
    try {
      others = await living(disk, folder, prefix, own);
    } catch (error) {
      await release();
      throw error;
    }
    if (others.length === 0) break;
    const late = Date.now() > end;
    const withdraws = others.some((o) => o < own);
    if (late || withdraws) await release();
    if (late)
      throw new WriteError(
        shown,
        `is being written by another run, says ${join(folder, others[0] ?? '')}. Wait for it, or choose another place. Nothing was changed`,
      );
    await setTimeout(PAUSE[withdraws ? 'withdrawn' : 'first'] * (1 + Math.random()));
  }
  const beat = setInterval(() => void disk.touch(path).catch(() => undefined), BEAT).unref();
  try {
    return await work();
  } finally {
    clearInterval(beat);
    await release();
  }
}

/** The other runs at a place, by their files; those of dead ones are taken away. */
async function living(disk: Disk, folder: string, prefix: string, own: string): Promise<readonly string[]> {
  const others = (await disk.names(folder)).filter((n) => n.startsWith(prefix) && n !== own);
  const found: string[] = [];
  for (const name of others) {
    const path = join(folder, name);
    if (await isDead(disk, path, name.slice(prefix.length), join(folder, own)))
      await disk.unlink(path).catch((error) => {
        if (codeOf(error) !== 'ENOENT') throw error;
      });
    else found.push(name);
  }
  return found.toSorted();
}

async function isDead(disk: Disk, path: string, owner: string, own: string): Promise<boolean> {
  const [, process_, machine] = /^(\d+\.\d+)-[0-9a-f]+-(.*)$/.exec(owner) ?? [];
  if (process_ !== undefined && machine === OWNER.machine) return !runs(process_);
  const theirs = await disk.look(path);
  if (theirs === null) return true;
  await disk.touch(own); // both times by the clock of the disk
  return ((await disk.look(own))?.time ?? 0) - theirs.time > SILENCE;
}

/** True while a process runs that has this number and began then. */
function runs(owner: string): boolean {
  const [pid = '', began = ''] = owner.split('.');
  try {
    process.kill(Number(pid), 0);
  } catch (error) {
    if (codeOf(error) !== 'EPERM') return false; // EPERM: it runs, as somebody else
  }
  const now = beginOf(pid);
  return now === UNKNOWN || began === UNKNOWN || now === began;
}

const UNKNOWN = '0';

/** When a process began, in ticks since the machine did; `0` where the system does not say. */
function beginOf(pid: string): string {
  try {
    const [, after = ''] = readFileSync(`/proc/${pid}/stat`, 'latin1').split(/\) (?!.*\) )/s);
    return after.split(' ')[19] ?? UNKNOWN;
  } catch {
    return UNKNOWN;
  }
}

/** What tells machines apart, and containers and starts of one. */
function machineName(): string {
  const parts = [hostname()];
  try {
    parts.push(readFileSync('/proc/sys/kernel/random/boot_id', 'latin1').slice(0, 8));
    parts.push(readlinkSync('/proc/self/ns/pid').replace(/\D/g, ''));
  } catch {
    // the name alone, where the system says no more
  }
  return parts
    .join('.')
    .replace(/[^\w.-]/g, '_')
    .slice(0, 80);
}

/** This process, the same as long as it lives. */
const OWNER = { process: `${process.pid}.${beginOf('self')}`, machine: machineName() };
