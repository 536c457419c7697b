import { spawnSync } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { BIN, unread } from '../built.js';
import { stripJob } from '../jobs.js';
import { emptyFolder, jobFile } from '../place.js';

describe('a reader that is gone is no fault', () => {
  test.each([
    ['the answer', 'stdout', ['gauges', '--json'], 0],
    ['help', 'stdout', ['--help'], 0],
    ['problems', 'stderr', ['check', 'nowhere.yaml'], 2],
  ] as const)('of %s: %s, quiet, the exit status stays', async (_, stream, argv, exit) => {
    expect(await unread(stream, ...argv)).toEqual({ exit, said: '' });
  });
});

test('an answer that cannot be printed on a full disk: one line, exit 3', async () => {
  const answer = join(await emptyFolder(), 'gauges.txt');
  const line = 'ulimit -f 0; exec "$0" "$1" gauges > "$2"';
  const { status, stderr } = spawnSync('sh', ['-c', line, process.execPath, BIN, answer], {
    encoding: 'utf8',
  });
  expect(stderr).toBe('tinwright: the answer cannot be printed (EFBIG).\n');
  expect(status).toBe(3);
});

test('TINWRIGHT_DEBUG=1 shows where a fault happened, nothing else does', async () => {
  const module = join(await emptyFolder(), 'broken.mjs');
  await writeFile(module, BROKEN);
  const job = await jobFile(stripJob());
  const run = (debug: string) =>
    spawnSync(process.execPath, [BIN, 'check', job, '--with', module], {
      encoding: 'utf8',
      env: { ...process.env, TINWRIGHT_DEBUG: debug },
    });
  const FAULT =
    'tinwright: a fault of the program (TypeError: too late); please report it with the job file.\n';
  expect(run('')).toMatchObject({ status: 2, stdout: '', stderr: FAULT });
  const shown = run('1');
  expect(shown.status).toBe(2);
  expect(shown.stderr.endsWith(FAULT)).toBe(true);
  expect(shown.stderr).toContain('broken.mjs:3');
});

/** A module that fails in its third line, where nobody waits for it. */
const BROKEN = `export default [];
setTimeout(() => {
  throw new TypeError('too late');
});
await new Promise((done) => setTimeout(done, 500));`;
