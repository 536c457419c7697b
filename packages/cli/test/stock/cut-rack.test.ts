import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { planShear, readRack } from '@tinwright/cutting';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { cutRack } from '../../src/stock/cut-rack.js';
import { emptyFolder } from '../place.js';

const RACK = `units: mm
sheets: [{ name: full, material: mild-steel, thickness: 1, size: [2000, 1000], count: 3 }]
`;
const LIMITS = { length: 3000, stop: 3000 };
const blank = {
  part: 'tray',
  material: 'mild-steel',
  thickness: 1,
  x: 500,
  y: 400,
  quantity: 2,
  grain: null,
};

async function planned(meanwhile = async (_rack: string): Promise<void> => undefined) {
  const file = join(await emptyFolder(), 'rack.yaml');
  await writeFile(file, RACK);
  const plans = planShear([blank], readRack(parse(RACK)), LIMITS);
  let written = 0;
  const also = async () => {
    written++;
    await meanwhile(file);
  };
  const cut = () => cutRack({ file, bytes: Buffer.from(RACK), job: 'trays' }, plans, also);
  return { file, cut, count: () => written };
}

test('a rack as it was: one sheet fewer, its offcut in, the files written once', async () => {
  const { file, cut, count } = await planned();
  await cut();
  expect(count()).toBe(1);
  const { sheets } = readRack(parse(await readFile(file, 'utf8')));
  expect(sheets.find((s) => s.name === 'full')?.count).toBe(2);
  expect(sheets.some((s) => s.name.startsWith('trays offcut 1.'))).toBe(true);
});

test('a rack changed by someone else meanwhile: refused, theirs stays, no file is written', async () => {
  const { file, cut, count } = await planned();
  const theirs = RACK.replace('count: 3', 'count: 2');
  await writeFile(file, theirs);
  await expect(cut()).rejects.toThrow('was changed while the cuts were planned. Run again.');
  expect(await readFile(file, 'utf8')).toBe(theirs);
  expect(count()).toBe(0);
});

test('a rack changed while the files are written: theirs stays, and it is told that the cuts are written', async () => {
  const theirs = `${RACK}# counted again\n`;
  const { cut, file, count } = await planned((rack) => writeFile(rack, theirs));
  await expect(cut()).rejects.toThrow(
    'was changed by another program meanwhile. The cuts are written, their sheets not taken out: run again',
  );
  expect(await readFile(file, 'utf8')).toBe(theirs);
  expect(count()).toBe(1);
});

test('two runs at the same time: the second is refused, the sheet is taken once', async () => {
  const { file, cut, count } = await planned();
  const ends = await Promise.allSettled([cut(), cut()]);
  expect(ends.map((e) => e.status).toSorted()).toEqual(['fulfilled', 'rejected']);
  expect(count()).toBe(1);
  expect(readRack(parse(await readFile(file, 'utf8'))).sheets.find((s) => s.name === 'full')?.count).toBe(2);
});
