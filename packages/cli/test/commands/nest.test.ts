import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { stripJob } from '../jobs.js';
import { below, emptyFolder, jobFile } from '../place.js';

const RACK = `units: mm
kerf: 1.3
sheets:
  - { name: full, material: galvanised-steel, thickness: 1.0, size: [300, 200], count: 2 }
`;

/** Nest the strip, so many of it, with few moves. */
async function nest(quantity: number, rack: string, ...options: readonly string[]) {
  const job = await jobFile(stripJob(['width: 40', `quantity: ${quantity}\n    width: 40`]));
  const folder = join(job, '..');
  await writeFile(join(folder, 'rack.yaml'), rack);
  const out = join(folder, 'nest');
  const ran = await tinwright(
    'nest',
    job,
    '--rack',
    join(folder, 'rack.yaml'),
    '--out',
    out,
    '--moves',
    '200',
    ...options,
  );
  const files = (await below(folder)).filter((f) => f.startsWith('nest/'));
  const list = files.includes('nest/nest.json')
    ? JSON.parse(await readFile(join(out, 'nest.json'), 'utf8'))
    : null;
  return { ...ran, files, list, into: out };
}

test('eight strips on one sheet: its DXF and SVG, the list, exit 0', async () => {
  const { exit, out, files, list } = await nest(8, RACK);
  expect(exit).toBe(0);
  expect(files).toEqual(['nest/nest.json', 'nest/nests', 'nest/nests/full-1.dxf', 'nest/nests/full-1.svg']);
  expect(out).toContain('full-1  8 parts');
  expect(list).toMatchObject({
    format: 1,
    spacing: 5,
    kerf: 1.3,
    sheets: [{ name: 'full-1', x: 300, y: 200 }],
  });
  expect(list.sheets[0].pieces.map((p: { id: string }) => p.id).toSorted()[0]).toBe('bracket-1');
  for (const { matrix } of list.sheets[0].pieces) expect(matrix).toHaveLength(6);
});

test('the same again, byte for byte, whatever the number of threads', async () => {
  const texts = await Promise.all(
    ['1', '3'].map(async (threads) => {
      const { into } = await nest(5, RACK, '--threads', threads);
      return readFile(join(into, 'nests/full-1.dxf'), 'utf8');
    }),
  );
  expect(texts[0]).toBe(texts[1]);
});

test('stock short: what fits is written, what is missing is named, exit 1', async () => {
  const { exit, out, list } = await nest(40, RACK);
  expect(exit).toBe(1);
  expect(out).toMatch(
    /error bracket: \d+ without a sheet: no room was left on the stock; [\d.]+ kg of parts are missing, by area alone [\d.]+ of a sheet full/,
  );
  expect(list.missing[0].count + list.sheets.flatMap((s: { pieces: unknown[] }) => s.pieces).length).toBe(40);
});

test('a part larger than every sheet is named, exit 1', async () => {
  const { exit, out } = await nest(1, RACK.replace('[300, 200]', '[60, 60]'));
  expect(exit).toBe(1);
  expect(out).toContain(
    'error bracket: 1 without a sheet: larger than every sheet of its metal; nearest is full, 60 mm x 60 mm usable',
  );
});

test('a kerf of 0 is remarked on', async () => {
  const { exit, out } = await nest(1, RACK, '--kerf', '0');
  expect(exit).toBe(0);
  expect(out).toContain('warning job: the kerf is 0');
});

test('common cuts: parts a kerf apart, what is spared told and in nest.json, the slanting side named', async () => {
  const { exit, out, list } = await nest(8, RACK, '--common-cuts');
  expect(exit).toBe(0);
  expect(list.spacing).toBe(1.3);
  const { length, spared, pierces, starts } = list.sheets[0].cut;
  expect(spared).toBeGreaterThan(100);
  expect(length).toBeGreaterThan(spared);
  expect(pierces).toBeLessThan(8);
  expect(out).toMatch(
    /full-1: [\d.]+ mm of cut, [\d.]+ mm spared by common cuts, \d+ pierces?, \d+ starts? in a cut made before, about [\d.]+ min/,
  );
  expect(out).toMatch(/note bracket: bracket-\d on full-1 .*have the slanting side of that cut/);
  expect(starts).toBeGreaterThan(0);
  const german = await nest(8, RACK, '--common-cuts', '--lang', 'de');
  expect(german.out).toContain('durch gemeinsame Schnitte gespart');
  expect((await nest(8, RACK)).list.sheets[0]).not.toHaveProperty('cut');
});

test.each([
  ['no width of the cut', 8, ['--kerf', '0'], 'the kerf is 0, and the table'],
  ['a single part', 1, [], 'no straight edges lie far enough along each other'],
])('common cuts with %s: told that there is none', async (_, quantity, more, words) => {
  const { exit, out } = await nest(quantity, RACK, '--common-cuts', ...more);
  expect(exit).toBe(0);
  expect(out).toContain(`warning job: no cut is made for two parts at once: ${words}`);
});

test('common cuts of a job cut by hand: told that there is none, the spacing is the usual one', async () => {
  const file = await jobFile(stripJob(['units: mm', 'units: mm\ncutBy: hand']));
  const folder = join(file, '..');
  await writeFile(join(folder, 'rack.yaml'), RACK);
  const out = join(folder, 'out');
  const args = [file, '--rack', join(folder, 'rack.yaml'), '--out', out, '--moves', '10', '--common-cuts'];
  expect((await tinwright('nest', ...args)).out).toContain('outlines are cut by hand');
  expect(JSON.parse(await readFile(join(out, 'nest.json'), 'utf8')).spacing).toBe(5);
});

test.each([
  [['--spacing', '0'], /--spacing: 0 mm given, 0.1 mm to 200 mm allowed/],
  [['--spacing', '-3'], /--spacing/],
  [['--turns', 'sideways'], /--turns: sideways given; quarter, half, none, free/],
  [['--lanes', '0'], /--lanes: 0 given, a whole number from 1 to 64/],
  [['--least-edge', 'kerf', '--kerf', '0'], /--least-edge: kerf given, and nobody says how wide the cut is/],
  [['--least-edge', '99'], /--least-edge: 99 mm given, 0 mm to 10 mm allowed/],
])('%j is refused and nothing is written', async (options, words) => {
  const { exit, err, files } = await nest(1, RACK, ...options);
  expect(exit).toBe(2);
  expect(err).toMatch(words);
  expect(files).toEqual([]);
});

test('without a rack nothing can be nested', async () => {
  const job = await jobFile(stripJob());
  const { exit, err } = await tinwright('nest', job);
  expect(exit).toBe(2);
  expect(err).toContain('--rack FILE is missing');
});

test('edges under the kerf: gone from the sheet unless they are asked for, and then named', async () => {
  const grip = `units: mm
stock: { material: mild-steel, thickness: 1, sheets: [[600, 600]], kerf: 1.3 }
bending: { rule: k-factor, insideRadius: 1 }
parts:
  - { name: grip, family: handle, span: 300, width: 40, sideDepth: 14, hem: { type: closed, length: 8 }, tabs: { length: 28 } }
`;
  const folder = await emptyFolder();
  await writeFile(join(folder, 'grip.yaml'), grip);
  const run = (...more: readonly string[]) =>
    tinwright(
      'nest',
      join(folder, 'grip.yaml'),
      '--out',
      join(folder, 'out'),
      '--moves',
      '10',
      '--json',
      ...more,
    );
  const short = (out: string) =>
    JSON.parse(out).findings.filter((f: { code: string }) => f.code === 'edge-under-kerf');
  const drawn = short((await run('--least-edge', '0')).out);
  expect(drawn).toHaveLength(1);
  expect(drawn[0].message).toMatch(/an edge of [\d.]+ mm is shorter than the cut of 1\.3 mm is wide/);
  expect(short((await run()).out)).toEqual([]);
});

test('findings of the table of the shop stand with the nest: holes it cannot cut', async () => {
  const job = `units: mm
stock: { material: mild-steel, thickness: 1, sheets: [[600, 600]] }
bending: { rule: k-factor, insideRadius: 1 }
parts:
  - { name: hook, family: bracket, width: 60, base: 40, leg: 50, holes: { diameter: 4, count: 2, inset: 15 } }
`;
  const shop = `units: mm
table: { name: plasma table, process: plasma, length: 1250, width: 1250, kerf: 1.3, smallestHole: 6 }
`;
  const folder = await emptyFolder();
  await writeFile(join(folder, 'job.yaml'), job);
  await writeFile(join(folder, 'shop.yaml'), shop);
  const run = (...more: readonly string[]) =>
    tinwright(
      'nest',
      join(folder, 'job.yaml'),
      '--shop',
      join(folder, 'shop.yaml'),
      '--out',
      join(folder, 'out'),
      '--moves',
      '10',
      '--json',
      ...more,
    );
  const codes = (out: string): readonly string[] =>
    JSON.parse(out).findings.map((f: { code: string }) => f.code);
  expect(codes((await run()).out)).toContain('hole-under-table');
  expect((await run('--small-holes', 'mark')).exit).toBe(0);
  const dxf = await readFile(join(folder, 'out/nests/600-x-600-mm-1.dxf'), 'utf8');
  expect(dxf.match(/\r\nPOINT\r\n/g)).toHaveLength(4);
});
