import { symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { stripJob } from '../jobs.js';
import { emptyFolder, jobFile } from '../place.js';

/** A device that never ends, under a name. */
async function endless(name: string): Promise<string> {
  const path = join(await emptyFolder(), name);
  await symlink('/dev/zero', path);
  return path;
}

test('a job that is a device is not read', async () => {
  const { exit, err } = await tinwright('check', await endless('job.yaml'));
  expect(exit).toBe(2);
  expect(err).toContain(':1:1: this is a pipe or a device, not a job file.');
});

test.each(['rows.csv', 'rows.tsv', 'rows.jsonl', 'rows.yaml'])(
  'a table %s that is a device is not read',
  async (name) => {
    const out = join(await emptyFolder(), 'out');
    const table = await endless(name);
    const { exit, err } = await tinwright('sizes', await jobFile(stripJob()), '--table', table, '--out', out);
    expect(exit).toBe(2);
    expect(err).toContain('this is a pipe or a device, not a table');
  },
);

test.each(['rows.csv', 'rows.jsonl'])('a row of %s that does not end is refused', async (name) => {
  const folder = await emptyFolder();
  const table = join(folder, name);
  await writeFile(table, 'x'.repeat(3_000_000));
  const ran = await tinwright(
    'sizes',
    await jobFile(stripJob()),
    '--table',
    table,
    '--out',
    join(folder, 'out'),
  );
  expect(ran.exit).toBe(2);
  expect(ran.err).toContain(':1:1: a row of more than 100000 characters.');
});

test('lines end with a return, a line feed or both, also where a chunk ends between them', async () => {
  const folder = await emptyFolder();
  const table = join(folder, 'rows.jsonl');
  const row = (length: number) => JSON.stringify({ name: `s${length}`, width: length });
  // the file is read in chunks of 64 kB: this return is the last character of the first
  const first = `${row(30)}${' '.repeat(65_535 - row(30).length)}\r`;
  await writeFile(table, `${first}\n${row(31)}\r${row(32)}\n\nno json`);
  const ran = await tinwright(
    'sizes',
    await jobFile(stripJob()),
    '--table',
    table,
    '--out',
    join(folder, 'out'),
  );
  expect(ran.err).toContain('rows.jsonl:5:1: this line is no JSON');
});
