import { mkdir, open, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { stripJob } from '../jobs.js';
import { below, emptyFolder, jobFile } from '../place.js';

const VERBS = ['make', 'check', 'explain'];
const MEGABYTE = 1_000_000;

/** A file of this size that takes no room on the disk. */
async function hollowFile(bytes: number): Promise<string> {
  const path = join(await emptyFolder(), 'job.yaml');
  const handle = await open(path, 'w');
  await handle.truncate(bytes);
  await handle.close();
  return path;
}

describe.each(VERBS)('%s', (verb) => {
  const run = async (path: string) => {
    const out = join(await emptyFolder(), 'out');
    return tinwright(verb, path, ...(verb === 'make' ? ['--out', out] : []));
  };

  test('a file that is not there: said at its name', async () => {
    const path = join(await emptyFolder(), 'job.yaml');
    expect(await run(path)).toEqual({ exit: 2, out: '', err: `${path}:1:1: there is no such file.\n` });
  });

  test('a folder is told from a job', async () => {
    const path = await emptyFolder();
    const { exit, err } = await run(path);
    expect(exit).toBe(2);
    expect(err).toBe(`${path}:1:1: this is a folder, not a job file.\n`);
  });

  test('a path below a file is refused', async () => {
    const path = join(await jobFile(stripJob()), 'job.yaml');
    const { exit, err } = await run(path);
    expect(exit).toBe(2);
    expect(err).toMatch(/:1:1: the file cannot be read/);
  });

  test('a file of 50 MB is refused by its size, with the size allowed', async () => {
    const path = await hollowFile(50 * MEGABYTE);
    const { exit, out, err } = await run(path);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toBe(`${path}:1:1: a job file of 50000000 bytes given, up to 1000000 allowed.\n`);
  });
});

test('a megabyte is still read, one byte more is not', async () => {
  const job = stripJob();
  const filled = (size: number) => `${job}#${'-'.repeat(size - job.length - 2)}\n`;
  const most = await tinwright('check', await jobFile(filled(MEGABYTE)));
  expect(most).toMatchObject({ exit: 0, err: '' });
  const over = await tinwright('check', await jobFile(filled(MEGABYTE + 1)));
  expect(over.exit).toBe(2);
  expect(over.err).toContain('a job file of 1000001 bytes given, up to 1000000 allowed');
});

test('a link to a job is followed', async () => {
  const link = join(await emptyFolder(), 'link.yaml');
  await symlink(await jobFile(stripJob()), link);
  expect((await tinwright('check', link)).exit).toBe(0);
});

test('problems name the file as it was given', async () => {
  const folder = await emptyFolder();
  await mkdir(join(folder, 'seed trays'));
  const path = join(folder, 'seed trays', 'Kräuter 1.yaml');
  await writeFile(path, stripJob(['width: 40', 'width: 0']));
  const { err } = await tinwright('check', path);
  expect(err).toMatch(/^.*Kräuter 1\.yaml:12:12: part "bracket": width: 0 mm given/);
  expect(err.startsWith(path)).toBe(true);
  expect(await below(folder)).toEqual(['seed trays', 'seed trays/Kräuter 1.yaml']);
});
