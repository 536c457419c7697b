import { spawn } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { join } from 'node:path';
import { FAMILIES, PROGRAM } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { freePort, REDIS, startRedis } from '../../../../tests/kit/redis.js';
import { needsOf, refusalOf } from '../../src/sizes/needs-of.js';
import { BIN } from '../built.js';
import { tinwright } from '../host.js';
import { below, emptyFolder } from '../place.js';

const JOB = {
  units: 'mm',
  parts: [{ name: 'tray', family: 'open-box' }, { name: 'odd', family: 'opne-box' }, 5],
};

describe('what a worker has to have', () => {
  test('is the program, the families that the job names, and the modules', async () => {
    const needs = await needsOf(JOB, FAMILIES, []);
    expect(needs).toEqual({ program: PROGRAM.mark, families: ['open-box'], modules: [] });
    expect(refusalOf(needs, FAMILIES, [])).toBeNull();
  });

  test('another version is refused', async () => {
    const needs = { ...(await needsOf(JOB, FAMILIES, [])), program: 'tinwright 0.0.9' };
    expect(refusalOf(needs, FAMILIES, [])).toBe(
      `it is ${PROGRAM.mark}, the run is "tinwright 0.0.9". Install the same version on both`,
    );
  });

  test('a family that is not there is named', async () => {
    const needs = await needsOf(JOB, FAMILIES, []);
    const bare = FAMILIES.filter((f) => f.name !== 'open-box');
    expect(refusalOf(needs, bare, [])).toContain(
      'does not have the family "open-box". Start it with the same --with',
    );
  });

  test('modules are told apart by their content', async () => {
    const module = join(await emptyFolder(), 'own.mjs');
    await writeFile(module, 'export default 1;');
    const needs = await needsOf(JOB, FAMILIES, [module]);
    expect(refusalOf(needs, FAMILIES, needs.modules)).toBeNull();
    await writeFile(module, 'export default 2;');
    const { modules } = await needsOf(JOB, FAMILIES, [module]);
    expect(refusalOf(needs, FAMILIES, modules)).toContain('its modules are not those of the run');
  });
});

test('no Redis: one line, exit 3, nothing written', async () => {
  const folder = await emptyFolder();
  await writeFile(
    join(folder, 'tray.yaml'),
    'units: mm\nstock: { material: mild-steel, thickness: 1 }\nparts: [{ name: tray, family: open-box, length: 300, width: 200, height: 50 }]\n',
  );
  await writeFile(join(folder, 't.csv'), 'length\n200\n');
  const url = `redis://127.0.0.1:${await freePort()}`;
  const asked = [join(folder, 'tray.yaml'), '--table', join(folder, 't.csv'), '--out', join(folder, 'out')];
  const run = await tinwright('sizes', ...asked, '--queue', url);
  const line = `${url}: no Redis answers here (ECONNREFUSED).\n`;
  expect(run).toMatchObject({ exit: 3, out: '', err: line });
  expect(await below(folder)).toEqual(['t.csv', 'tray.yaml']);
  expect(await tinwright('worker', '--queue', url)).toMatchObject({ exit: 3, out: '', err: line });
});

describe('a key that is none', () => {
  test('is refused by its file', async () => {
    const key = join(await emptyFolder(), 'key');
    expect((await tinwright('worker', '--key', key)).err).toContain('there is no such file');
    await writeFile(key, 'short\n');
    const { exit, err } = await tinwright('worker', '--key', key);
    expect(exit).toBe(2);
    expect(err).toContain('5 characters given, 16 or more wanted');
  });
});

const HANGS = 60_000; // ms

describe.runIf(REDIS)('a run whose tasks nobody takes', () => {
  async function waitingRun() {
    const redis = await startRedis();
    const folder = await emptyFolder();
    await writeFile(
      join(folder, 'tray.yaml'),
      'units: mm\nstock: { material: mild-steel, thickness: 1 }\nparts: [{ name: tray, family: open-box, length: 300, width: 200, height: 50 }]\n',
    );
    await writeFile(join(folder, 't.csv'), 'length\n200\n');
    const asked = ['sizes', 'tray.yaml', '--table', 't.csv', '--out', 'out', '--queue', redis.url];
    const child = spawn(process.execPath, [BIN, ...asked], { cwd: folder });
    const run = { out: '', said: '', exit: null as number | null };
    child.stdout.on('data', (chunk) => {
      run.out += chunk;
    });
    child.stderr.on('data', (chunk) => {
      run.said += chunk;
    });
    const ended = new Promise<void>((done) =>
      child.on('close', (exit) => {
        run.exit = exit;
        done();
      }),
    );
    const says = async (what: string) => {
      while (!run.said.includes(what) && child.exitCode === null)
        await new Promise((done) => setTimeout(done, 50));
      expect(run.said).toContain(what);
    };
    return { redis, folder, child, run, ended, says };
  }

  test.each(['SIGINT', 'SIGTERM'] as const)(
    'ends with one %s, and can be run again',
    async (signal) => {
      const { redis, folder, child, run, ended, says } = await waitingRun();
      await says('no worker is at');
      child.kill(signal);
      await ended;
      expect(run.out).toBe(
        '0 sizes in out: 0 made, 0 kept, 0 refused. Stopped before the end; run it again to go on.\n',
      );
      expect(child.signalCode).toBe('SIGINT');
      expect(await below(join(folder, 'out'))).toEqual([
        '.sizes.csv.before',
        '.sizes.csv.begun',
        'index.svg',
        'sizes.json',
      ]);
      await redis.end();
      const table = ['--table', join(folder, 't.csv'), '--out', join(folder, 'out')];
      expect((await tinwright('sizes', join(folder, 'tray.yaml'), ...table)).out).toContain(
        '1 made, 0 kept, 0 refused',
      );
    },
    HANGS,
  );

  test(
    'ends with one signal after its Redis is gone, too',
    async () => {
      const { redis, child, run, ended, says } = await waitingRun();
      await says('no worker is at');
      await redis.end();
      child.kill('SIGINT');
      await ended;
      expect(run.out).toContain('Stopped before the end; run it again to go on.');
    },
    HANGS,
  );

  test('ends by itself, with the key, when something else takes a name of the queue', async () => {
    const { redis, run, ended, says } = await waitingRun();
    await says('no worker is at');
    const other = connect(Number(new URL(redis.url).port), '127.0.0.1');
    other.end('SET bull:tinwright-sizes:active x\r\n');
    await ended;
    expect(run.said).toContain(
      `${redis.url}: bull:tinwright-sizes:active is a string there, a list wanted: something else took the name. Remove it, or name another database of this Redis. What was made stands; run it again to go on`,
    );
    expect(run.exit).toBe(3);
    await redis.end();
  });
});

test.runIf(REDIS)(
  'a worker ends with one signal, after its Redis is gone, too',
  async () => {
    for (const gone of [false, true]) {
      const redis = await startRedis();
      const child = spawn(process.execPath, [BIN, 'worker', '--queue', redis.url, '--jobs', '1']);
      let said = '';
      const ended = new Promise((done) => child.on('close', done));
      await new Promise<void>((ready) =>
        child.stdout.on('data', (chunk) => {
          said += chunk;
          if (said.includes('Ctrl-C ends it')) ready();
        }),
      );
      if (gone) await redis.end();
      child.kill('SIGTERM');
      expect(await ended).toBe(0);
      expect(said).toContain('0 tasks done.');
      if (!gone) await redis.end();
    }
  },
  HANGS,
);
