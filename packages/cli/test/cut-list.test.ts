import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { planJob, readJob } from '@tinwright/core';
import { rivetLength } from '@tinwright/core/internal';
import { blankOf, planShear, readRack } from '@tinwright/cutting';
import { cutListFiles, cutTotals, cutWork, listedPart } from '@tinwright/files/internal';
import { DEFAULT_SHOP } from '@tinwright/shop';
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { parse as yaml } from 'yaml';
import { CARRIER } from './carrier.js';
import { tinwright } from './host.js';
import { emptyFolder } from './place.js';

const carrierPlan = () => planJob(readJob(yaml(CARRIER)));
const LIMITS = { length: 3000, stop: 3000 };
const SHEET = { name: 'full', material: 'mild-steel', thickness: 1, size: [1000, 500], price: 20 };

/** Cut list of the carrier from one kind of sheet. */
function workOf(plan = carrierPlan(), sheet: object = SHEET) {
  const rack = readRack({ units: 'mm', sheets: [sheet] });
  const blanks = plan.parts.map((p) => ({ ...blankOf(p), material: 'mild-steel', thickness: 1 }));
  const parts = plan.parts.map((p) => listedPart(p, p.name));
  const effort = { seed: 1, steps: { sheets: 100, offcut: 50, neat: 5 }, enough: () => false };
  return cutWork([plan], { plans: planShear(blanks, rack, LIMITS, effort), parts }, DEFAULT_SHOP.rates);
}

const rowsOf = (work: ReturnType<typeof workOf>, unit: 'mm' | 'in' = 'mm', file = 'cutlist.csv') =>
  parse(String(cutListFiles(work, unit).find((f) => f.path === file)?.content), {
    columns: true,
  }) as Readonly<Record<string, string>>[];

test('a row for every piece: its blank in the chosen unit, mass by true area, share and price of its sheet', () => {
  const plan = carrierPlan();
  const rows = rowsOf(workOf(plan));
  expect(rows).toHaveLength(plan.parts.reduce((sum, p) => sum + p.quantity, 0));
  const body = plan.parts.find((p) => p.name === 'body');
  const row = rows.find((r) => r.part === 'body');
  const [x, y] = (body as (typeof plan.parts)[number]).flat.blank.max;
  expect(Number(row?.x)).toBeCloseTo(x, 2);
  expect(Number(row?.mass_kg)).toBeCloseTo(body?.mass as number, 4);
  expect(Number(row?.sheet_share)).toBeCloseTo((x * y) / 500_000, 4);
  expect(Number(row?.price)).toBeCloseTo((20 * x * y) / 500_000, 2);
  const inches = rowsOf(workOf(plan), 'in').find((r) => r.part === 'body');
  expect(Number(inches?.x)).toBeCloseTo(x / 25.4, 4);
  expect(inches?.unit).toBe('in');
});

test('shares of used, kept and lost sheet add up to 1; minutes follow from the rates', () => {
  const work = workOf();
  const all = cutTotals(work);
  expect(all.used + all.kept + all.waste).toBeCloseTo(1, 12);
  expect(all.price).toBe(20 * all.sheets);
  const { stroke, setting, speed, pierce, fastener } = work.rates;
  const [plan] = work.plans;
  expect(all.minutes.shear * 60).toBeCloseTo(
    (plan?.steps.length ?? 0) * stroke + (plan?.settings ?? 0) * setting,
    9,
  );
  expect(all.minutes.table).toBeCloseTo(all.cutLength / speed + (all.pierces * pierce) / 60, 9);
  expect(all.minutes.joining * 60).toBeCloseTo(all.fasteners * fastener, 9);
});

test('a sheet without a price: no sum is made up', () => {
  const { price: _, ...free } = SHEET;
  expect(cutTotals(workOf(carrierPlan(), free)).price).toBeNull();
});

test('a name that a spreadsheet would take for a formula is made harmless', () => {
  const rows = rowsOf(workOf(carrierPlan(), { ...SHEET, name: '=HYPERLINK("x")' }));
  for (const row of rows) expect(row.sheet).toBe(`'=HYPERLINK("x")`);
});

// ISO 15981, rows of length 6 to 12 read in a copy: 3.2 mm holds 1.5 to 3.5 with 6 mm, 3.5 to 5 with 8 mm
test.each([
  [3.2, 2, 6],
  [3.2, 4, 8],
  [4.8, 2, 6],
  [4, 0.5, null],
  [9, 2, null],
])('a rivet of %d mm through %d mm of sheet is %s mm long', (diameter, stack, length) => {
  expect(rivetLength(diameter, stack)).toBe(length);
});

test('fasteners stand in a list of their own by kind, diameter and length', () => {
  const rows = rowsOf(workOf(), 'mm', 'fasteners.csv');
  const { fasteners } = carrierPlan().assembly as { readonly fasteners: readonly unknown[] };
  expect(rows.reduce((sum, r) => sum + Number(r.count), 0)).toBe(fasteners.length);
  for (const row of rows) expect(Number(row.stack_mm)).toBeGreaterThan(0);
});

test('make with a rack: cut list and fasteners beside the files, and in the manifest', async () => {
  const folder = await emptyFolder();
  const at = (name: string) => join(folder, name);
  await writeFile(at('job.yaml'), CARRIER);
  const plan = carrierPlan();
  const { material, sheet } = plan.parts[0] as (typeof plan.parts)[number];
  const rack = (count: number) =>
    `units: mm\nsheets: [{ name: full, material: ${material.name}, thickness: ${sheet.thickness}, size: [400, 300], count: ${count} }]\n`;
  await writeFile(at('rack.yaml'), rack(4));
  const make = () => tinwright('make', at('job.yaml'), '--rack', at('rack.yaml'), '--out', at('out'));
  expect((await make()).exit).toBe(0);
  const manifest = async () => JSON.parse(await readFile(at('out/job.json'), 'utf8'));
  const { files, cutList } = await manifest();
  expect(files).toEqual(expect.arrayContaining(['cutlist.csv', 'fasteners.csv']));
  const pieces = plan.parts.reduce((sum, p) => sum + p.quantity, 0);
  expect(cutList.blanksCut).toHaveLength(pieces);
  expect(cutList.minutes.basis).toContain('estimates');
  await writeFile(at('rack.yaml'), rack(1));
  const short = await make();
  expect(short.exit).toBe(0); // the files are right; what is missing is a warning
  expect(short.out).toContain('without a sheet: no room was left on the stock; ');
  expect(short.out).toMatch(/kg of parts are missing, by area alone [\d.]+ of a sheet /);
  expect((await manifest()).findings.map((f: { code: string }) => f.code)).toContain('left-out');
});

test('a packet with stock known: the shear plan stands in its cut list, in German too', async () => {
  const folder = await emptyFolder();
  const at = (name: string) => join(folder, name);
  await writeFile(
    at('job.yaml'),
    CARRIER.replace('  thickness: 1.0\n', '  thickness: 1.0\n  sheets: [[1000, 500]]\n'),
  );
  const out = at('packet.html');
  const ran = await tinwright('packet', at('job.yaml'), '--out', out, '--sections', 'cuts', '--lang', 'de');
  expect(ran.exit).toBe(0);
  const text = await readFile(out, 'utf8');
  for (const said of ['Schnitte der Reihe nach', 'Was gebraucht wird', 'Tafel 1', '>body-1<'])
    expect(text).toContain(said);
});
