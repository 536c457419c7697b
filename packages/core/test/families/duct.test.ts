import { planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';

const DUCT = { name: 'duct', family: 'duct', length: 300, width: 200, height: 120, seam: 15 };

const job = (part: object, more: object = {}) =>
  planJob(
    readJob({
      units: 'mm',
      stock: { material: 'galvanised-steel', thickness: 0.8 },
      bending: { rule: 'k-factor', insideRadius: 1 },
      parts: [{ ...DUCT, ...part }],
      ...more,
    } as unknown),
  );

// The stretch-out of a rectangular pipe is its girth and the lap of its seam (the rule of the old pattern books, from
// memory). Ours lays the lap inside, so the last side is a sheet and the play shorter.
test('laid out nominally a wrapped duct takes its girth and its seam', () => {
  const [duct] = job({ piece: 'wrap', play: 0.2 }, { bending: { rule: 'nominal' } }).parts;
  expect(duct?.flat.blank.max).toEqual([
    expect.closeTo(300, 9),
    expect.closeTo(2 * (200 + 120) - 0.8 - 0.2 + 15, 9),
  ]);
});

test('flanges stand out all round, and the duct is as long as over their faces', () => {
  const [duct] = job({ piece: 'wrap', ends: { type: 'flanged', width: 20 } }).parts;
  expect(duct?.formed.size).toEqual([
    expect.closeTo(300, 9),
    expect.closeTo(200 + 40, 9),
    expect.closeTo(120 + 40, 9),
  ]);
});

test('folds for drive slips are on the upright sides only, outside', () => {
  const [duct] = job({ piece: 'wrap', ends: { type: 'slip', fold: 12 } }).parts;
  const folds = duct?.flat.bends.filter((b) => b.hem !== null) ?? [];
  expect(folds.map((b) => [b.parent, b.direction])).toEqual([
    ['north', 'down'],
    ['north', 'down'],
    ['south', 'down'],
    ['south', 'down'],
  ]);
});

test('a cross-break runs from corner to corner of every side, on the metal', () => {
  const [duct] = job({ piece: 'half', crossBreak: 'scribed' }).parts;
  const { flat } = duct as NonNullable<typeof duct>;
  expect(flat.scribes).toHaveLength(4);
  for (const [a, b] of flat.scribes) {
    expect(Math.abs(a[0] - b[0])).toBeGreaterThan(290);
    for (const p of [a, b]) {
      expect(Math.min(p[0], p[1])).toBeGreaterThan(1);
      expect(p[0]).toBeLessThan(flat.blank.max[0] - 1);
      expect(p[1]).toBeLessThan(flat.blank.max[1] - 1);
    }
  }
});

test('two halves close to a duct of the size said', () => {
  const by = { 'blind-rivet': { diameter: 3.2 } };
  const { assembly, findings } = job(
    { quantity: 2, play: 0 },
    {
      joints: [
        { name: 'first', from: 'duct-1.tab', to: 'duct-2.edge', by },
        { name: 'second', from: 'duct-2.tab', to: 'duct-1.edge', by },
      ],
    },
  );
  const other = assembly?.placed.find((p) => p.piece === 'duct-2')?.pose;
  // turned half about its length: its outside is 120 above the first one's, its free edge flush with the far side
  expect(other?.z[2]).toBeCloseTo(-1, 9);
  expect(other?.origin[2]).toBeCloseTo(120, 9);
  expect(other?.origin[1]).toBeCloseTo(200, 9);
  expect(findings.filter((f) => f.severity === 'error')).toEqual([]);
});
