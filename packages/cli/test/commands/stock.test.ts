// What may say which sheets there are: the job, the shop, a rack file.
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { below, emptyFolder } from '../place.js';

const job = (stock: string, part = '') => `units: mm
name: seed trays
stock: { material: mild-steel, thickness: 1${stock} }
bending: { rule: k-factor, k: 0.42, insideRadius: 1 }
parts:
  - { name: tray, family: open-box, length: 300, width: 200, height: 40, quantity: 6${part} }
`;

/** Run a verb on a job among files, quickly; `sheets` are names of the stock it used. */
async function run(
  verb: 'shear' | 'nest',
  files: Readonly<Record<string, string>>,
  ...more: readonly string[]
) {
  const folder = await emptyFolder();
  for (const [name, text] of Object.entries(files)) await writeFile(join(folder, name), text);
  const at = (arg: string) => (files[arg] === undefined ? arg : join(folder, arg));
  const quick = verb === 'shear' ? ['--steps', '100'] : ['--moves', '50'];
  const out = join(folder, 'out');
  const ran = await tinwright(verb, join(folder, 'job.yaml'), '--out', out, ...quick, ...more.map(at));
  const read = async (name: string) => JSON.parse(await readFile(join(out, name), 'utf8'));
  const sheets = async (): Promise<readonly string[]> =>
    verb === 'shear'
      ? (await read('shear.json')).map((s: { sheetName: string }) => s.sheetName)
      : (await read('nest.json')).sheets.map((s: { stock: string }) => s.stock);
  return { ...ran, folder, sheets, read };
}

test.each(['shear', 'nest'] as const)('%s: sheets of the job, offcuts of it first', async (verb) => {
  const stock = ', sheets: [[2000, 1000]], offcuts: [{ name: rest, size: [820, 420] }]';
  const { exit, err, sheets } = await run(verb, { 'job.yaml': job(stock) }, '--offcuts', 'first');
  expect(err).toBe('');
  expect(exit).toBe(0);
  expect(new Set(await sheets())).toEqual(new Set(['rest', '2000 x 1000 mm']));
});

test.each(['shear', 'nest'] as const)('%s: sheets of a shop file, only those of the metal', async (verb) => {
  const shop = `units: mm
sheets:
  - [1250, 1250]
  - { name: thick, size: [2500, 1250], material: mild-steel, thickness: 2 }
`;
  const { exit, sheets } = await run(verb, { 'job.yaml': job(''), 'shop.yaml': shop }, '--shop', 'shop.yaml');
  expect(exit).toBe(0);
  expect(new Set(await sheets())).toEqual(new Set(['1250 x 1250 mm']));
});

test('a rack file counts before the sheets of the job', async () => {
  const rack = 'units: mm\nsheets: [{ name: bay, material: mild-steel, thickness: 1, size: [2000, 1000] }]\n';
  const files = { 'job.yaml': job(', sheets: [[1000, 500]]'), 'rack.yaml': rack };
  const { sheets } = await run('shear', files, '--rack', 'rack.yaml');
  expect(await sheets()).toEqual(['bay']);
});

test.each(['shear', 'nest'] as const)('%s: a dear offcut at cost stays where it is', async (verb) => {
  const stock =
    ', sheets: [{ size: [2000, 1000], price: 30 }], offcuts: [{ name: dear, size: [1900, 1000], price: 90 }]';
  const first = await run(verb, { 'job.yaml': job(stock) });
  expect(await first.sheets()).toEqual(['dear']);
  const atCost = await run(verb, { 'job.yaml': job(stock) }, '--offcuts', 'at-cost');
  expect(await atCost.sheets()).toEqual(['2000 x 1000 mm']);
});

test.each([
  [', sheets: [[2000, 0]]', /job\.yaml:3:.*stock\.sheets/],
  [', sheets: [[2000, 1000]], trim: 500', /job\.yaml:3:.*the trim leaves nothing/],
  [', offcuts: [{ outline: [[0, 0], [100, 100], [100, 0], [0, 100]] }]', /crosses or touches itself/],
  [', kerf: -1', /job\.yaml:3:.*kerf/],
])('stock of a job with %s is refused with its place by every verb', async (stock, said) => {
  const { exit, err, folder } = await run('shear', { 'job.yaml': job(stock) });
  expect(exit).toBe(2);
  expect(err).toMatch(said);
  const made = await tinwright('make', join(folder, 'job.yaml'), '--out', join(folder, 'made'));
  expect(made.exit).toBe(2);
  expect(made.err).toMatch(said);
  expect(await below(folder)).toEqual(['job.yaml']);
});

test('grain of a part: blanks lie along it, and where that cannot be it is said', async () => {
  const along = await run('shear', {
    'job.yaml': job(', sheets: [{ size: [2000, 1000], grain: x }]', ', grain: y'),
  });
  const [sheet] = await along.read('shear.json');
  const [w, h] = [sheet.parts[0].w, sheet.parts[0].h];
  expect(w).toBeLessThan(h); // the blank's y, its short side, runs along x of the sheet
  const never = await run('shear', {
    'job.yaml': job(', sheets: [{ size: [2000, 300], grain: x }]', ', grain: y'),
  });
  expect(never.exit).toBe(2);
  expect(never.err).toContain('with grain along y fits no sheet that way round');
});

test('metal thicker than the shear of the shop takes is refused', async () => {
  const shop = `units: mm
shear: { name: foot shear, length: 1050, capacity: [{ material: mild-steel, thickness: 0.8 }] }
sheets: [[2000, 1000]]
`;
  const { exit, err } = await run('shear', { 'job.yaml': job(''), 'shop.yaml': shop }, '--shop', 'shop.yaml');
  expect(exit).toBe(2);
  expect(err).toContain('1 mm thick; the shear takes 0.8 mm');
});

test('what is left out is told in German, for people and in the list', async () => {
  const stock = ', sheets: [{ name: Tafel, size: [500, 500], count: 1 }]';
  const { exit, out, read } = await run('nest', { 'job.yaml': job(stock) }, '--lang', 'de');
  expect(exit).toBe(1);
  expect(out).toContain('5 ohne Tafel: auf dem Lagerbestand war kein Platz mehr; es fehlen');
  expect((await read('nest.json')).findings[0]).toMatchObject({ code: 'left-out', part: 'tray' });
});
