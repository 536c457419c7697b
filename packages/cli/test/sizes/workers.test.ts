import { spawn } from 'node:child_process';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { BIN } from '../built.js';
import { below, emptyFolder } from '../place.js';

const JOB = `units: mm
stock: { material: mild-steel, thickness: 1 }
parts:
  - { name: bin, family: open-box, length: 300, width: 200, height: 50 }
`;

async function run(folder: string, out: string, ...more: readonly string[]) {
  const argv = [
    'sizes',
    join(folder, 'bin.yaml'),
    '--table',
    join(folder, 't.csv'),
    '--out',
    join(folder, out),
  ];
  const child = spawn(process.execPath, [BIN, ...argv, ...more]);
  let said = '';
  child.stdout.on('data', (chunk: Buffer) => {
    said += chunk.toString();
  });
  const ended = new Promise<number | null>((done) => child.on('close', done));
  return { child, ended, said: () => said };
}

const contents = async (folder: string) =>
  Promise.all(
    (await below(folder)).map(async (n) => [n, await readFile(join(folder, n), 'utf8').catch(() => '')]),
  );

test('one worker, three, or three that are killed and run again: the same bytes, every size once', async () => {
  const folder = await emptyFolder();
  await writeFile(join(folder, 'bin.yaml'), JOB);
  const rows = Array.from({ length: 120 }, (_, i) => `b${i},${200 + i},${i % 17 === 5 ? 0 : 150}\n`);
  await writeFile(join(folder, 't.csv'), `name,length,width\n${rows.join('')}`);
  const one = await run(folder, 'one', '--jobs', '1');
  expect(await one.ended).toBe(1); // some rows are refused
  const three = await run(folder, 'three', '--jobs', '3');
  expect(await three.ended).toBe(1);
  const whole = await contents(join(folder, 'one'));
  expect(whole.filter(([n]) => n?.endsWith('job.json'))).toHaveLength(113);
  expect(await contents(join(folder, 'three'))).toEqual(whole);
  for (const [round, signal] of (['SIGKILL', 'SIGINT', 'SIGKILL'] as const).entries()) {
    const { child, ended } = await run(folder, 'killed', '--jobs', '3');
    for (let i = 0; i < 200 && child.exitCode === null; i++) {
      await setTimeout(25);
      const names = await readdir(join(folder, 'killed')).catch(() => []);
      if (names.filter((n) => /^b\d+$/.test(n)).length > 25 * (round + 1)) break; // it is at work
    }
    child.kill(signal);
    await ended;
  }
  const last = await run(folder, 'killed', '--jobs', '3');
  expect(await last.ended).toBe(1);
  expect(last.said()).toMatch(/ [1-9]\d* kept/);
  expect(await contents(join(folder, 'killed'))).toEqual(whole);
});
