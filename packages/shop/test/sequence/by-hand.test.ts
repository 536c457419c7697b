// Bends by hand: jaws, bars and bench are bodies, and both sides of the part have to pass them.

import { DEFAULT_SHOP, planSequence, type Shop } from '@tinwright/shop';
import { describe, expect, test, vi } from 'vitest';
import { planned } from '../shops.js';

vi.setConfig({ testTimeout: 600_000 }); // plans by the dozen

const hands: Shop = { ...DEFAULT_SHOP, brake: null };
const strip = (legs: readonly number[], angles: readonly number[], width = 50) =>
  planned({ family: 'bent-strip', width, legs, angles });

describe('a channel in the vise', () => {
  test('a web of 8 between flanges of 50: the first flange would swing through the jaws', () => {
    const { status, reasons } = planSequence(strip([50, 8, 50], [90, 90]), hands);
    expect(status).toBe('infeasible');
    expect(reasons.map((r) => [...r.bends, r.code, r.panel])).toEqual([
      ['leg-2', 'jaws', 'leg-3'],
      ['leg-2', 'jaws', 'leg-3'],
      ['leg-3', 'jaws', 'leg-1'],
      ['leg-3', 'jaws', 'leg-1'],
    ]);
  });

  test.each([40, 100])('a web of %d leaves room for bars', (web) => {
    expect(planSequence(strip([50, web, 50], [90, 90]), hands).status).toBe('optimal');
  });
});

test('walls 120 deep at both ends of a base: no bar can be clamped between them', () => {
  const deep = planned({ family: 'open-box', length: 240, width: 160, height: 120 });
  expect(planSequence(deep, hands).status).toBe('infeasible');
});

test('a step made over the edge of the bench says so: it is not one of the vise', () => {
  const { steps } = planSequence(strip([50, 30, 50], [90, 90]), DEFAULT_SHOP);
  const byHand = steps.filter((s) => s.machine !== 'brake');
  expect(byHand.map(({ machine, clamp }) => ({ machine, clamp }))).toEqual([
    { machine: 'hand', clamp: 'bench' },
  ]);
  // bars fit between what stands at the ends of the line
  expect(byHand.map((s) => s.length)).toEqual([50]);
});

test('without a brake a hem is folded over a bar and closed with a mallet on the bench, before walls stand at its ends', () => {
  const hems = { north: { type: 'closed', length: 8 } };
  const { status, steps } = planSequence(
    planned({ family: 'open-box', length: 200, width: 120, height: 40, hems }),
    hands,
  );
  expect(status).toBe('optimal');
  expect(steps.slice(0, 2).map(({ action, clamp }) => ({ action, clamp }))).toEqual([
    { action: 'fold', clamp: 'bench' },
    { action: 'close', clamp: 'bench' },
  ]);
  // bars bend it square, the mallet lays it over: the larger side lies still
  expect(steps[0]).toMatchObject({ setAngle: 90, angle: 135, held: 'north' });
});

test('tabs on two walls under one bar: both walls are held', () => {
  const tabbed = planned({ family: 'open-box', length: 180, width: 120, height: 40, corner: 'tabbed' });
  const { steps } = planSequence(tabbed, hands);
  const both = steps.find((s) => s.bends.includes('tab-north-east') && s.bends.includes('tab-south-east'));
  expect(both?.gripped).toEqual(['north', 'south']);
});

describe('a pan with a hemmed rim and folded corners', () => {
  const pan = planned({
    family: 'flared-pan',
    bottom: { length: 200, width: 120 },
    depth: 40,
    flare: 12,
    edge: { type: 'hem', length: 8 },
    corner: 'folded',
    tabs: { length: 15 },
    stock: { material: 'mild-steel', thickness: 0.6 },
  });

  test('its tabs are bent under a bar that ends beside the hem, which runs off aslant', () => {
    const { status, steps } = planSequence(pan, DEFAULT_SHOP);
    expect(status).toBe('optimal');
    const tabs = steps.filter((s) => s.bends.some((b) => b.startsWith('tab-')));
    expect(new Set(tabs.map((s) => s.clamp))).toEqual(new Set(['bench']));
  });
});

describe('a hand seamer', () => {
  const tabs = planned({ family: 'open-box', length: 180, width: 120, height: 40, corner: 'tabbed' });
  const capacity = [{ material: 'mild-steel', thickness: 1 }];
  const handSeamer = { name: 'hand seamer', width: 90, depth: 30, jaw: 8, capacity };

  test('takes corner tabs in 20 s each', () => {
    const { steps } = planSequence(tabs, { ...DEFAULT_SHOP, handSeamer });
    const byHand = steps.filter((s) => s.machine === 'hand');
    expect(byHand.flatMap((s) => s.bends).every((b) => b.startsWith('tab-'))).toBe(true);
    expect(byHand.length).toBeGreaterThan(0);
    expect(new Set(byHand.map((s) => s.clamp))).toEqual(new Set(['seamer']));
  });

  test('never makes a plan longer', () => {
    const seconds = (shop: Shop) => planSequence(tabs, shop).seconds;
    expect(seconds({ ...DEFAULT_SHOP, handSeamer })).toBeLessThanOrEqual(seconds(DEFAULT_SHOP));
  });
});
