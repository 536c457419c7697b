import { type Blank, NO_TRIM, planShear, type Rack, SHEAR_EFFORT, verifyShearPlan } from '@tinwright/cutting';
import { expect, test } from 'vitest';
import { loadCoverSolver } from '../../src/stock/cover-solver.js';

const SHORT = { ...SHEAR_EFFORT, steps: { sheets: 300, offcut: 20, neat: 2 } };
const ANY = { length: 3000, stop: 3000 };
const METAL = { material: 'mild-steel', thickness: 1 };
const FULL = { name: 'full', x: 2000, y: 1000, count: Number.POSITIVE_INFINITY, price: null, grain: null };
const RACK: Rack = {
  sheets: [{ ...METAL, ...FULL, origin: 'sheet', trim: NO_TRIM, outline: null }],
  kerf: 0,
  leastOffcut: { x: 100, y: 100 },
};

/** Eight kinds of blanks in tens, of sizes that fill a sheet badly one by one. */
const EIGHT = [
  [344.2, 267.3, 45],
  [623.9, 241.8, 31],
  [418.5, 402.7, 28],
  [277.6, 190.4, 52],
  [585.1, 333.9, 24],
  [362.8, 311.5, 40],
  [505.4, 228.6, 36],
  [447.3, 374.2, 36],
].map(
  ([x, y, n], i): Blank => ({
    ...METAL,
    part: `kind-${i + 1}`,
    x: x as number,
    y: y as number,
    quantity: n as number,
    grain: null,
  }),
);

test('eight kinds in tens: with a linear programme fewer sheets than by ruin and recreate alone, the same every time', async () => {
  const cover = await loadCoverSolver();
  const planned = (effort: object) => planShear(EIGHT, RACK, ANY, { ...SHORT, ...effort });
  const [alone, led, again] = [planned({}), planned({ cover }), planned({ cover })];
  expect(led.flatMap((p) => verifyShearPlan(p, EIGHT, ANY))).toEqual([]);
  expect(led[0]?.missing).toEqual([]);
  expect(led[0]?.sheets.length).toBeLessThan(alone[0]?.sheets.length as number);
  expect(led[0]?.sheets.length).toBeGreaterThanOrEqual(led[0]?.bound as number);
  expect(again).toEqual(led);
});

test('a limited number of sheets, kerf, grain and a short shear hold for generated patterns too', async () => {
  const cover = await loadCoverSolver();
  const limits = { length: 1050, stop: 600 };
  const trim = { west: 5, east: 5, south: 5, north: 5 };
  const sheets = RACK.sheets.map((s) => ({ ...s, trim, grain: 'x' as const, count: 12 }));
  const blanks = EIGHT.map((b, i) => (i % 3 === 0 ? { ...b, grain: 'x' as const } : b));
  const plans = planShear(blanks, { ...RACK, kerf: 2, sheets }, limits, { ...SHORT, cover });
  expect(plans.flatMap((p) => verifyShearPlan(p, blanks, limits))).toEqual([]);
  expect(plans[0]?.sheets).toHaveLength(12);
  expect(plans[0]?.missing.length).toBeGreaterThan(0);
});

test('the solver of linear programmes: a textbook cover, its prices, and one that cannot be', async () => {
  const cover = await loadCoverSolver();
  const columns = [
    { cost: 1, rows: [0], amounts: [2] },
    { cost: 1, rows: [0, 1], amounts: [1, 1] },
    { cost: 1, rows: [1], amounts: [3] },
  ];
  // by hand: 9 twos and 4/3 threes against pairs; no pair helps, as 1/2 + 1/3 is less than it costs
  const answer = cover({ least: [18, 4], columns });
  expect(Array.from(answer?.amounts ?? [], (v) => Number(v.toFixed(9)))).toEqual([9, 0, 1.333333333]);
  expect(Array.from(answer?.prices ?? [], (v) => Number(v.toFixed(9)))).toEqual([0.5, 0.333333333]);
  expect(cover({ least: [1, 1, 1], columns })).toBeNull();
});
