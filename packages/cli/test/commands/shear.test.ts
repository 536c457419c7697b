import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readRack } from '@tinwright/cutting';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { tinwright } from '../host.js';
import { below, emptyFolder } from '../place.js';

const JOB = `units: mm
name: seed trays
stock: { material: mild-steel, thickness: 1 }
bending: { rule: k-factor, k: 0.42, insideRadius: 1 }
parts:
  - { name: tray, family: open-box, length: 300, width: 200, height: 40, quantity: 6 }
  - { name: strip, family: bent-strip, width: 60, legs: [20, 200, 20], angles: [90, 90], quantity: 4 }
`;
const RACK = `units: mm
sheets:
  - { name: full, material: mild-steel, thickness: 1, size: [2000, 1000], count: 2, price: 38 } # by the door
offcuts:
  - { name: rest, material: mild-steel, thickness: 1, size: [800, 420] }
`;
const QUICK = ['--steps', '200'];

async function place(files: Readonly<Record<string, string>>) {
  const folder = await emptyFolder();
  for (const [name, text] of Object.entries(files)) await writeFile(join(folder, name), text);
  const at = (name: string) => join(folder, name);
  return { folder, at, shear: (...more: readonly string[]) => tinwright('shear', ...more, ...QUICK) };
}

test('a job and a rack: diagrams, cuts, cut list, and a summary for programs', async () => {
  const { at, shear } = await place({ 'job.yaml': JOB, 'rack.yaml': RACK });
  const { exit, out, err } = await shear(
    at('job.yaml'),
    '--rack',
    at('rack.yaml'),
    '--out',
    at('cut'),
    '--json',
  );
  expect(err).toBe('');
  expect(exit).toBe(0);
  const said = JSON.parse(out);
  expect(said.missing).toEqual([]);
  expect(said.cost).toBeGreaterThanOrEqual(said.bound - 1e-6);
  const list = JSON.parse(await readFile(at('cut/shear.json'), 'utf8')) as {
    parts: { id: string }[];
    sheet: object;
  }[];
  expect(list).toHaveLength(said.sheets);
  expect(list.flatMap((s) => s.parts.map((p) => p.id)).toSorted()).toEqual([
    ...[1, 2, 3, 4].map((n) => `strip-${n}`),
    ...[1, 2, 3, 4, 5, 6].map((n) => `tray-${n}`),
  ]);
  const rows = (await readFile(at('cut/cutlist.csv'), 'utf8')).trim().split('\r\n');
  expect(rows).toHaveLength(11);
  expect(rows[0]?.split(',').slice(0, 4)).toEqual(['blank', 'part', 'x', 'y']);
  expect((await readFile(at('cut/shear.pdf'))).subarray(0, 5).toString()).toBe('%PDF-');
  expect(await readFile(at('cut/diagrams/sheet-1.svg'), 'utf8')).toContain('>tray-1<');
});

test('the same job and rack: the same bytes', async () => {
  const { at, shear } = await place({ 'job.yaml': JOB, 'rack.yaml': RACK });
  for (const out of ['one', 'two']) await shear(at('job.yaml'), '--rack', at('rack.yaml'), '--out', at(out));
  for (const name of ['shear.json', 'cutlist.csv', 'shear.pdf', 'diagrams/sheet-1.svg'])
    expect(await readFile(at(`one/${name}`))).toEqual(await readFile(at(`two/${name}`)));
});

test('two jobs with a part of the same name: both are cut, each under its job', async () => {
  const { at, shear } = await place({ 'a.yaml': JOB, 'b.yaml': JOB, 'rack.yaml': RACK });
  const { exit } = await shear(at('a.yaml'), at('b.yaml'), '--rack', at('rack.yaml'), '--out', at('cut'));
  expect(exit).toBe(0);
  const text = await readFile(at('cut/shear.json'), 'utf8');
  expect(text).toContain('"a.tray-6"');
  expect(text).toContain('"b.tray-6"');
});

test('one job given twice: its parts are cut twice, those of the second under a numbered name', async () => {
  const { at, shear } = await place({ 'a.yaml': JOB, 'rack.yaml': RACK });
  const { exit } = await shear(at('a.yaml'), at('a.yaml'), '--rack', at('rack.yaml'), '--out', at('cut'));
  expect(exit).toBe(0);
  const text = await readFile(at('cut/shear.json'), 'utf8');
  expect(text).toContain('"a.tray-6"');
  expect(text).toContain('"a-2.tray-6"');
});

test('kept offcuts: the rack loses what was cut, gains what is left, and keeps its comments', async () => {
  const { at, shear } = await place({ 'job.yaml': JOB, 'rack.yaml': RACK });
  const args = [at('job.yaml'), '--rack', at('rack.yaml'), '--out', at('cut'), '--keep-offcuts'];
  expect((await shear(...args)).exit).toBe(0);
  const text = await readFile(at('rack.yaml'), 'utf8');
  expect(text).toContain('# by the door');
  const before = readRack(parse(RACK)).sheets;
  const after = readRack(parse(text)).sheets;
  const cut = JSON.parse(await readFile(at('cut/shear.json'), 'utf8')) as {
    sheetName: string;
    offcuts: { w: number; h: number }[];
  }[];
  const usedFull = cut.filter((s) => s.sheetName === 'full').length;
  expect(after.find((s) => s.name === 'full')?.count).toBe(2 - usedFull);
  expect(after.some((s) => s.name === 'rest')).toBe(!cut.some((s) => s.sheetName === 'rest'));
  const fresh = after.filter((s) => !before.some((b) => b.name === s.name));
  expect(fresh.map((s) => [s.x, s.y])).toEqual(
    cut.flatMap((s) => s.offcuts.map(({ w, h }) => [Number(w.toFixed(2)), Number(h.toFixed(2))])),
  );
});

test('a part larger than every sheet names the nearest; nothing is written', async () => {
  const job = JOB.replace('length: 300', 'length: 2500');
  const { folder, at, shear } = await place({ 'job.yaml': job, 'rack.yaml': RACK });
  const { exit, err } = await shear(at('job.yaml'), '--rack', at('rack.yaml'), '--out', at('cut'));
  expect(exit).toBe(2);
  expect(err).toMatch(
    /^shear: part "tray": a blank of .* is larger than every sheet; nearest: full, 2000 mm x 1000 mm/,
  );
  expect(await below(folder)).toEqual(['job.yaml', 'rack.yaml']);
});

test('stock that runs short: what is missing is said, and exit 1', async () => {
  const rack = RACK.replace('count: 2', 'count: 1');
  const { at, shear } = await place({
    'job.yaml': JOB.replace('quantity: 6', 'quantity: 60'),
    'rack.yaml': rack,
  });
  const { exit, out } = await shear(at('job.yaml'), '--rack', at('rack.yaml'), '--out', at('cut'), '--json');
  expect(exit).toBe(1);
  const [missing] = JSON.parse(out).missing;
  expect(missing.part).toBe('tray');
  expect(missing.kg).toBeGreaterThan(0);
  expect(missing.of).toBe('full');
  expect(await readFile(at('cut/cutlist.csv'), 'utf8')).toMatch(/\d+ missing,tray/);
});

test.each([
  ['sheets: [{ name: full, size: [2000, 1000], material: tin, thickness: 1 }]', /2:\d+: .*material/],
  ['trim: -1', /2:7: trim: .*-1/],
])('a rack with %s is refused with its place', async (line, said) => {
  const { at, shear } = await place({ 'job.yaml': JOB, 'rack.yaml': `units: mm\n${line}\n` });
  const { exit, err } = await shear(at('job.yaml'), '--rack', at('rack.yaml'), '--out', at('cut'));
  expect(exit).toBe(2);
  expect(err).toMatch(said);
});

test.each([
  [['--keep-offcuts'], '--keep-offcuts is for --rack FILE'],
  [['--keep-offcuts', '--rack', '-'], '--keep-offcuts is for --rack FILE'],
  [['--seed', 'x'], '--seed: x given, a whole number from 0'],
  [['--seconds', '-1'], '--seconds'],
])('%j is refused', async (options, said) => {
  const { at } = await place({ 'job.yaml': JOB });
  const { exit, err } = await tinwright('shear', at('job.yaml'), '--out', at('cut'), ...options);
  expect(exit).toBe(2);
  expect(err).toContain(said);
});

test('--sizes: every size of a job from the sheets it brings along, once for all of them', async () => {
  const sizes = `units: mm
stock: { material: mild-steel, thickness: 1, sheets: [{ size: [1000, 500], count: 1 }] }
parts:
  - { name: tray, family: open-box, length: 300, width: 200, height: 40 }
sizes:
  - { name: ada, tray.length: 200 }
  - { name: ben, tray.length: 250 }
  - { name: cem, tray.length: 260 }
  - { name: dua, tray.length: 900 }
`;
  const { at, shear } = await place({ 'job.yaml': sizes });
  const { exit, out } = await shear(at('job.yaml'), '--sizes', '--out', at('cut'), '--json');
  expect(exit).toBe(1);
  const list = JSON.parse(await readFile(at('cut/shear.json'), 'utf8')) as { parts: { id: string }[] }[];
  const cut = list.flatMap((s) => s.parts.map((p) => p.id));
  const left = (JSON.parse(out) as { missing: readonly { part: string }[] }).missing.map((m) => m.part);
  expect(list).toHaveLength(1);
  expect([...cut.map((id) => id.replace(/-1$/, '')), ...left].toSorted()).toEqual(
    ['ada', 'ben', 'cem', 'dua'].map((name) => `${name}.tray`),
  );
});

test('where nobody says what sheets there are, those that are taken for usual are told', async () => {
  const { at, shear } = await place({ 'job.yaml': JOB, 'rack.yaml': RACK });
  const say = 'Neither --rack, job nor shop say what sheets there are: cut from as many as needed of ';
  const { out } = await shear(at('job.yaml'), '--out', at('cut'));
  expect(out).toContain(say);
  const [, told = ''] = out.split(say);
  const json = JSON.parse((await shear(at('job.yaml'), '--out', at('cut'), '--json')).out);
  for (const [x, y] of json.usualSheets) expect(told).toContain(`${x} x ${y} mm`);
  const german = await shear(at('job.yaml'), '--out', at('cut'), '--lang', 'de');
  expect(german.out).toContain('Weder --rack noch Auftrag noch Werkstatt sagen');
  const known = await shear(at('job.yaml'), '--rack', at('rack.yaml'), '--out', at('cut'), '--json');
  expect(JSON.parse(known.out)).not.toHaveProperty('usualSheets');
});
