import { readdir, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { WriteError } from '../../src/host/failure.js';
import { DISK } from '../../src/write/disk.js';
import { locked } from '../../src/write/lock.js';
import { onFullDisk } from '../built.js';
import { tinwright } from '../host.js';
import { stripJob } from '../jobs.js';
import { below, emptyFolder, jobFile } from '../place.js';

const hold = (target: string, work: () => Promise<void>, patience = 0) =>
  locked(DISK, { target, shown: 'out', patience }, work);
const HELD = /^is being written by another run, says .*\.out\.tinwright-lock-.*\. Wait for it/;

/** The name of the lock that a run holds on `out` just now. */
async function nameOfLock(around: string): Promise<string> {
  let names: readonly string[] = [];
  await hold(join(around, 'out'), async () => {
    names = await readdir(around);
  });
  return names[0] ?? '';
}

test('a folder that is held: a second run is refused with the name of the lock, until the first lets go', async () => {
  const around = await emptyFolder();
  const out = join(around, 'out');
  await hold(out, async () => {
    const second = await hold(out, async () => undefined).catch((error: unknown) => error);
    expect(second).toBeInstanceOf(WriteError);
    expect((second as WriteError).message).toMatch(HELD);
    const [lock] = await readdir(around);
    expect((second as WriteError).message).toContain(join(around, lock ?? '?'));
    await hold(join(around, 'out-2'), async () => undefined); // another folder is free
  });
  expect(await below(around)).toEqual([]);
  await hold(out, async () => undefined);
});

test('a run with patience gets its turn', async () => {
  const around = await emptyFolder();
  const order: number[] = [];
  const runs = [1, 2, 3, 4, 5, 6].map((n) =>
    hold(
      join(around, 'out'),
      async () => {
        order.push(n);
        await new Promise((done) => setTimeout(done, 5));
        order.push(n);
      },
      20_000,
    ),
  );
  await Promise.all(runs);
  expect(order).toHaveLength(12);
  for (let i = 0; i < 12; i += 2) expect(order[i]).toBe(order[i + 1]); // never two at once
  expect(await below(around)).toEqual([]);
});

test('make into a folder that is held: exit 3, nothing changed, the lock stays', async () => {
  const job = await jobFile(stripJob());
  const around = join(job, '..');
  const out = join(around, 'out');
  await tinwright('make', job, '--out', out);
  await writeFile(job, stripJob(['bracket', 'shelf-clip']));
  await hold(out, async () => {
    const before = await below(around);
    const ran = await tinwright('make', job, '--out', out);
    expect({ exit: ran.exit, out: ran.out }).toEqual({ exit: 3, out: '' });
    expect(ran.err).toMatch(/out: is being written by another run, says .*Nothing was changed\.\n$/);
    expect(await below(around)).toEqual(before);
  });
  expect((await tinwright('make', job, '--out', out)).exit).toBe(0);
  expect(await below(out)).toContain('parts/shelf-clip.dxf');
});

test('a lock of a process that is gone does not count, nor does one of an older process with the same number', async () => {
  const around = await emptyFolder();
  const name = await nameOfLock(around);
  const own = `${process.pid}.`;
  const [, began = ''] = new RegExp(`lock-${own}(\\d+)-`).exec(name) ?? [];
  for (const owner of [`4194304.${began}`, `${own}${Number(began) - 7}`]) {
    await writeFile(join(around, name.replace(/lock-\d+\.\d+-[0-9a-f]+/, `lock-${owner}-00`)), '');
    await hold(join(around, 'out'), async () => undefined);
    expect(await below(around)).toEqual([]);
  }
});

test('a lock of another machine or container, or one nobody can read: counts for a minute after its last beat', async () => {
  const around = await emptyFolder();
  const name = await nameOfLock(around);
  for (const theirs of [`${name}-elsewhere`, '.out.tinwright-lock-what']) {
    const path = join(around, theirs);
    await writeFile(path, '');
    await expect(hold(join(around, 'out'), async () => undefined)).rejects.toThrow(HELD);
    const past = Date.now() / 1000 - 61;
    await utimes(path, past, past);
    await hold(join(around, 'out'), async () => undefined);
    expect(await below(around)).toEqual([]);
  }
});

test('make on a full disk: exit 3, one line, and no lock is left behind', async () => {
  const job = await jobFile(stripJob());
  const out = join(job, '..', 'out');
  const { status, stdout, stderr } = onFullDisk('make', job, '--out', out);
  expect(stderr).toBe(
    `${out}: cannot be written: a file would be larger than allowed. Nothing was changed.\n`,
  );
  expect({ status, stdout }).toEqual({ status: 3, stdout: '' });
  expect(await below(join(job, '..'))).toEqual(['job.yaml']);
});
