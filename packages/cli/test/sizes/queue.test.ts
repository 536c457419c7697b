import { writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { FAMILIES, PROGRAM } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { needsOf, refusalOf } from '../../src/sizes/needs-of.js';
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

/** A port where nothing listens. */
async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as { port: number };
  await new Promise((done) => server.close(done));
  return port;
}

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
