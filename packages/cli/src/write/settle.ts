import { basename, dirname, join } from 'node:path';
import { WriteError } from '../host/failure.js';
import { carry } from './carry.js';
import type { Disk } from './disk.js';
import { listsIn } from './own-lists.js';
import { told } from './reason.js';

/** Where a set stands, and beside it where the next one is filled and where the last one is put when they change. */
export interface SettledPlaces {
  /** The folder as the user gave it. */
  readonly shown: string;
  readonly target: string;
  readonly fresh: string;
  readonly old: string;
}

export function placesOf(shown: string, target: string): SettledPlaces {
  const sibling = (what: string) => join(dirname(target), `.${basename(target)}.tinwright-${what}`);
  return { shown, target, fresh: sibling('new'), old: sibling('old') };
}

/**
 * Bring a folder into order that a run left as it was cut off. What it had filled goes; a set it had put aside comes
 * back, or, where the new one stands already, hands over what is not its own. A folder that somebody made while none
 * stood is joined with the set that comes back. May itself be cut off anywhere and begun again.
 * @throws WriteError that says where things lie
 */
export async function settle(disk: Disk, places: SettledPlaces): Promise<void> {
  const { shown, target, fresh, old } = places;
  if ((await disk.look(old)) === null) return disk.removeAll(fresh);
  const filled = (await disk.look(fresh)) !== null; // a set is put aside only while the next one is filled
  const standing = (await disk.look(target)) !== null;
  if (standing && !filled && (await listsIn(disk, target)).size > 0) return handOver(disk, places);
  await told(
    shown,
    (why) => `was left by a run that was cut off: its files lie in ${old} and cannot be put back: ${why}`,
    async () => {
      if (standing) await carry(disk, { from: target, to: old }, new Set());
      await disk.rename(old, target);
    },
  );
  await disk.removeAll(fresh);
}

/**
 * Move what is not the old set's own from where it was put aside into the new set, and take the rest away. Its own is
 * what a list of it names that the new set has too, but for files that the new list goes on naming.
 * @throws WriteError: the new set stands, and where the rest lies
 */
export async function handOver(disk: Disk, { shown, target, old }: SettledPlaces): Promise<void> {
  const says = (why: string) =>
    `is written, but files of yours that lay in it are in ${old} still and cannot be moved back: ${why}. Run it again when that is mended`;
  await told(shown, says, async () => {
    if ((await disk.look(old)) === null) return;
    const [before, now] = [await listsIn(disk, old), await listsIn(disk, target)];
    const gone = new Set<string>();
    const lists = new Set([...before.keys()].filter((name) => now.has(name)));
    for (const name of lists)
      for (const file of before.get(name)?.files ?? [])
        if (!now.get(name)?.files.has(file) || (await disk.look(join(target, file))) !== null) gone.add(file);
    await carry(disk, { from: old, to: target }, gone, lists);
  });
}

/**
 * Put a filled set in the place of the one that stands; either stands whole afterwards.
 * @throws WriteError when neither does: where the old one lies
 */
export async function swap(disk: Disk, { shown, target, fresh, old }: SettledPlaces): Promise<void> {
  const standing = await disk.look(target);
  if (standing !== null) {
    await disk.setMode(fresh, (standing.mode & 0o7777) | 0o700);
    await disk.rename(target, old);
  }
  try {
    await renameOver(disk, { target, fresh, old });
  } catch (error) {
    if (error instanceof WriteError || (await disk.look(old)) === null) throw error;
    await told(
      shown,
      (why) =>
        `is not there: the old set lies in ${old} and cannot be put back: ${why}. The next run tries again`,
      () => disk.rename(old, target),
    );
    throw error;
  }
}

const TRIES = 5;

/** A folder that somebody made just now goes to what was put aside: it is handed over with it. */
async function renameOver(disk: Disk, { target, fresh, old }: Omit<SettledPlaces, 'shown'>): Promise<void> {
  for (let tries = 1; ; tries++)
    try {
      await disk.rename(fresh, target);
      return;
    } catch (error) {
      const made = await disk.look(target);
      if (tries === TRIES || made?.kind !== 'folder') throw error;
      if ((await disk.look(old)) === null) await disk.rename(target, old);
      else await carry(disk, { from: target, to: old }, new Set());
    }
}
