import { spawnSync } from 'node:child_process';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { WriteError } from '../src/failure.js';
import { lockBeside } from '../src/lock.js';
import { onFullDisk } from './built.js';
import { tinwright } from './host.js';
import { stripJob } from './jobs.js';
import { below, emptyFolder, jobFile } from './place.js';

const LOCK = '.out.tinwright-lock';
const HELD = 'is being written by another run. Wait for it, or choose another folder';

test('a folder that is held: a second run is refused until the first lets go', async () => {
  const around = await emptyFolder();
  const out = join(around, 'out');
  const release = await lockBeside(out, 'out');
  await expect(lockBeside(out, 'trays/out')).rejects.toMatchObject({ place: 'trays/out', message: HELD });
  await expect(lockBeside(out, 'out')).rejects.toBeInstanceOf(WriteError);
  await release();
  expect(await below(around)).toEqual([]);
  await (await lockBeside(out, 'out'))();
});

test('another folder beside it is free', async () => {
  const around = await emptyFolder();
  await lockBeside(join(around, 'out'), 'out');
  await expect(lockBeside(join(around, 'out-2'), 'out-2')).resolves.toBeTypeOf('function');
});

test('make into a folder that is held: exit 3, nothing changed, the lock stays', async () => {
  const job = await jobFile(stripJob());
  const around = join(job, '..');
  const out = join(around, 'out');
  await tinwright('make', job, '--out', out);
  const release = await lockBeside(out, out);
  const before = await below(around);
  await writeFile(job, stripJob(['bracket', 'shelf-clip']));
  expect(await tinwright('make', job, '--out', out)).toEqual({ exit: 3, out: '', err: `${out}: ${HELD}.\n` });
  expect(await below(around)).toEqual(before);
  await release();
  expect((await tinwright('make', job, '--out', out)).exit).toBe(0);
  expect(await below(out)).toContain('parts/shelf-clip.dxf');
});

describe('a lock that nobody holds does not count, and goes', () => {
  const gone = () => String(spawnSync(process.execPath, ['-e', '']).pid);

  test.each([
    ['of a process that is gone', gone],
    ['with a word', () => 'mine'],
    ['with a number no process has', () => '-1'],
  ])('%s', async (_, holder) => {
    const around = await emptyFolder();
    await writeFile(join(around, LOCK), holder());
    const release = await lockBeside(join(around, 'out'), 'out');
    await release();
    expect(await below(around)).toEqual([]);
  });
});

/** As on a disk without second names for a file. */
const noLinks = () =>
  Promise.reject(Object.assign(new Error('no links here'), { code: 'EPERM', syscall: 'link' }));

describe.each([
  ['with links', undefined],
  ['without links', noLinks],
])('on a disk %s', (_, link) => {
  test('the lock holds the number of this process, nothing else is left, and it goes', async () => {
    const around = await emptyFolder();
    const release = await lockBeside(join(around, 'out'), 'out', link);
    expect(await below(around)).toEqual([LOCK]);
    expect(await readFile(join(around, LOCK), 'utf8')).toBe(String(process.pid));
    await expect(lockBeside(join(around, 'out'), 'out', link)).rejects.toThrow(HELD);
    await release();
    expect(await below(around)).toEqual([]);
  });

  test('of many that ask at once, one gets it', async () => {
    const around = await emptyFolder();
    const asked = await Promise.allSettled(
      Array.from({ length: 8 }, () => lockBeside(join(around, 'out'), 'out', link)),
    );
    const got = asked.filter((a) => a.status === 'fulfilled');
    expect(got).toHaveLength(1);
    await got[0]?.value();
    expect(await below(around)).toEqual([]);
  });
});

test('a lock that is empty still is waited for, not taken away', async () => {
  const around = await emptyFolder();
  await writeFile(join(around, LOCK), '');
  const second = lockBeside(join(around, 'out'), 'out');
  await writeFile(join(around, LOCK), String(process.pid));
  await expect(second).rejects.toThrow(HELD);
});

test('a lock that stays empty is of a run that was cut off', async () => {
  const around = await emptyFolder();
  await writeFile(join(around, LOCK), '');
  await (await lockBeside(join(around, 'out'), 'out'))();
  expect(await below(around)).toEqual([]);
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
