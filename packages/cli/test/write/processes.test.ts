import { type ChildProcess, spawn } from 'node:child_process';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { writeSet } from '../../src/write/files.js';
import { BIN } from '../built.js';
import { below, emptyFolder } from '../place.js';
import { set } from './sets.js';

const FILES = pathToFileURL(join(BIN, '..', '..', 'dist', 'write', 'files.js')).href;
const [A, B] = ['a', 'b'].map((x) => set([1, 2, 3, 4, 5, 6].map((n) => `parts/${x}-${n}.dxf`)));
const standsIn = (names: readonly string[], x: 'a' | 'b') =>
  names.filter((n) => n.startsWith(`parts/${x}-`)).length;

/** A process that writes the two sets in turn, until it is ended or has done so `turns` times. */
function writing(
  out: string,
  turns: number,
): { readonly child: ChildProcess; readonly ended: Promise<string> } {
  const program = `
    const { writeSet } = await import(${JSON.stringify(FILES)});
    const sets = ${JSON.stringify([A, B])};
    process.stdout.write('ready');
    for (let n = 0; n < ${turns}; n++)
      await writeSet(${JSON.stringify(out)}, sets[n % 2]).catch((error) => {
        if (!/another run/.test(error.message)) throw error;
      });`;
  const child = spawn(process.execPath, ['--input-type=module', '-e', program]);
  let said = '';
  child.stderr?.on('data', (chunk: Buffer) => {
    said += chunk.toString();
  });
  const ended = new Promise<string>((done) => child.on('close', () => done(said)));
  return { child, ended };
}

/** A process that ends before it is ready fails the test. */
const ready = (child: ChildProcess) =>
  new Promise<void>((done, failed) => {
    child.stdout?.once('data', () => done());
    child.once('exit', (code, signal) =>
      failed(new Error(`ended with ${code ?? signal} before it was ready`)),
    );
  });

test('killed at any moment, with two runs at once and files of the user inside: old set or new, nothing lost', async () => {
  const around = await emptyFolder();
  const out = join(around, 'out');
  await mkdir(out);
  await writeSet(out, A ?? []);
  const theirs: string[] = [];
  for (let round = 0; round < 10; round++) {
    await mkdir(join(out, 'photos'), { recursive: true });
    const name = round % 2 === 0 ? `photos/${round}.jpg` : `parts/note-${round}.txt`;
    await writeFile(join(out, name), name);
    theirs.push(name);
    const runs = [writing(out, 1000), writing(out, 1000)];
    await Promise.all(runs.map(({ child }) => ready(child)));
    await setTimeout(((round * 37) % 60) + 5);
    for (const { child } of runs) child.kill('SIGKILL');
    await Promise.all(runs.map((r) => r.ended));
    if ((await readdir(around)).includes('out')) {
      const names = await below(out);
      expect([standsIn(names, 'a'), standsIn(names, 'b')].toSorted()).toEqual([0, 6]);
    }
    await writeSet(out, (round % 2 === 0 ? A : B) ?? []);
    const names = await below(out);
    for (const path of theirs) expect(await readFile(join(out, path), 'utf8')).toBe(path);
    expect([standsIn(names, 'a'), standsIn(names, 'b')]).toEqual(round % 2 === 0 ? [6, 0] : [0, 6]);
    expect(await readdir(around)).toEqual(['out']);
  }
});

test('files saved into the folder while runs write are all there afterwards', async () => {
  const around = await emptyFolder();
  const out = join(around, 'out');
  await writeSet(out, A ?? []);
  const { child, ended } = writing(out, 12);
  let running = true;
  void ended.then(() => {
    running = false;
  });
  await ready(child);
  const saved: string[] = [];
  for (let n = 0; running && n < 150; n++) {
    const name = n % 3 === 0 ? `parts/note-${n}.txt` : `note-${n}.txt`;
    try {
      await writeFile(join(out, name), name);
      saved.push(name);
    } catch {
      // no folder stands just now: the program that saves knows that it did not
    }
    await setTimeout(3);
  }
  expect(await ended).toBe('');
  expect(saved.length).toBeGreaterThan(20);
  for (const path of saved)
    expect(await readFile(join(out, path), 'utf8').catch(() => null), path).toBe(path);
});

test('Ctrl-C while files are written: cleared up, and the process ends as by a signal or has finished', async () => {
  const around = await emptyFolder();
  const out = join(around, 'out');
  for (let round = 0; round < 5; round++) {
    const { child, ended } = writing(out, 1000);
    await ready(child);
    await setTimeout(((round * 13) % 30) + 3);
    child.kill('SIGINT');
    await ended;
    expect((await readdir(around)).filter((n) => n !== 'out')).toEqual([]);
  }
});
