import { writeFile } from 'node:fs/promises';
import { type Disk, SWIFT_DISK } from '../../src/write/disk.js';

/** The disk for tests of thousands of runs. */
export const QUICK: Disk = SWIFT_DISK;

/** A disk that goes wrong at one step, and how many steps were asked of it. */
export interface FaultyDisk {
  readonly disk: Disk;
  readonly steps: () => number;
}

/** The disk, but step number `at` is refused by the system; `counts` says which steps have a number. */
export function refusingAt(at: number, code: string, counts: 'every step' | 'changes'): FaultyDisk {
  return counted(counts, async (step, go) => {
    if (step === at) throw Object.assign(new Error(code), { code });
    return go();
  });
}

/** The disk of a process that is killed before change number `at`, or amid it where that writes: no later step happens. */
export function killedAt(at: number): FaultyDisk {
  let dead = false;
  return counted('changes', async (step, go, name, path) => {
    if (step === at && name === 'create') await writeFile(path, '');
    if (step >= at) dead = true;
    if (dead) throw new Error('killed');
    return go();
  });
}

type Watch = (step: number, go: () => Promise<unknown>, name: string, path: string) => Promise<unknown>;

const READS: readonly string[] = ['read', 'head', 'look', 'lookThrough', 'names', 'realPath'];

/** Steps count from 1. */
function counted(counts: 'every step' | 'changes', watch: Watch): FaultyDisk {
  let steps = 0;
  const entries = Object.entries(QUICK).map(([name, work]) => [
    name,
    (...given: readonly unknown[]) => {
      const count = counts === 'every step' || !READS.includes(name);
      if (count) steps += 1;
      return watch(
        count ? steps : 0,
        () => (work as (...g: readonly unknown[]) => Promise<unknown>)(...given),
        name,
        String(given[0]),
      );
    },
  ]);
  return { disk: Object.fromEntries(entries) as Disk, steps: () => steps };
}
