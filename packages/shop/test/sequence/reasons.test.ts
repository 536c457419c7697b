// Why a part cannot be bent, as a maker reads it.

import type { PartPlan } from '@tinwright/core';
import { sayIn } from '@tinwright/core/internal';
import {
  type Brake,
  DEFAULT_SHOP,
  EXAMPLE_PRESS,
  planSequence,
  type Sequence,
  type Shop,
} from '@tinwright/shop';
import { mendWords, reasonWords } from '@tinwright/words';
import { describe, expect, test, vi } from 'vitest';
import { pressShop, straight, vDie } from '../press-shop.js';
import { planned, shopWith } from '../shops.js';

vi.setConfig({ testTimeout: 600_000 }); // plans by the dozen

const said = ({ reasons }: Sequence, unit: 'mm' | 'in' = 'mm') =>
  reasons.map((r) => reasonWords(r, sayIn(unit)));
const box = planned({ family: 'open-box', length: 200, width: 120, height: 40 });
const box130 = planned({ family: 'open-box', length: 240, width: 160, height: 130 });

test('a sheet too thick is told once for all bends, the limit rounded down', () => {
  const capacity = (DEFAULT_SHOP.brake as Brake).capacity.map((c) => ({ ...c, thickness: 0.767 }));
  const plan = planSequence(box, shopWith({ capacity }));
  expect(plan.status).toBe('infeasible');
  const thick = said(plan).filter((m) => m.includes('thick'));
  expect(thick).toHaveLength(1);
  expect(thick[0]).toMatch(/^\w+, \w+, \w+ and 1 more: the sheet is 1 mm thick, the brake takes 0\.\d+ mm$/);
  const [, takes] = /takes ([\d.]+) mm/.exec(thick[0] ?? '') ?? [];
  expect(Number(takes)).toBeLessThanOrEqual(0.767);
});

test('the usual way of holding is told first', () => {
  const [first] = said(
    planSequence(planned({ family: 'open-box', length: 200, width: 120, height: 90 }), shopWith()),
  );
  expect(first).toMatch(/base held: .* runs into the beam over the fingers, by \d/);
});

test('a press with short tools only: the line stays bare, not what a hand cannot do', () => {
  const shop = pressShop([{ ...straight(10), lengths: [10] }], [vDie(8, 10)]);
  const messages = said(planSequence(box, shop));
  expect(messages).toEqual([expect.stringMatching(/: no tools of the rack make the width on the press$/)]);
});

test('a vise bends square, no further', () => {
  const shop = { ...DEFAULT_SHOP, brake: null };
  const strip = (angle: number) =>
    planned({ family: 'bent-strip', width: 40, legs: [30, 50], angles: [angle] });
  expect(planSequence(strip(90), shop).status).toBe('optimal');
  const sharp = planSequence(strip(135), shop);
  expect(sharp.status).toBe('infeasible');
  expect(said(sharp)).toContainEqual(expect.stringMatching(/135° to set, the vise does 95° at most/));
});

test('a shop without a vise is told that one would do', () => {
  const handle = planned({ family: 'bent-strip', width: 50, legs: [50, 30, 50], angles: [90, 90] });
  expect(planSequence(handle, DEFAULT_SHOP).status).toBe('optimal');
  const { status, mends } = planSequence(handle, { ...DEFAULT_SHOP, vise: null });
  expect(status).toBe('infeasible');
  expect(mends.map((m) => mendWords(m, sayIn('mm')))).toContainEqual(
    expect.stringMatching(/^a vise with folding bars \d+ mm long$/),
  );
});

describe('what would help is tried on every machine, and told', () => {
  const strip = (legs: readonly number[], angles: readonly number[], width = 50) =>
    planned({ family: 'bent-strip', width, legs, angles });
  const press: Shop = { ...DEFAULT_SHOP, brake: null, vise: null, press: EXAMPLE_PRESS };
  const pan: Brake = { ...(DEFAULT_SHOP.brake as Brake), name: 'pan brake', length: 400 };
  const straightJaw: Shop = { ...shopWith({ name: 'cornice brake', fingers: [1000] }), brakes: [pan] };
  const found = (plan: PartPlan, shop: Shop) => {
    const { status, mends } = planSequence(plan, shop);
    expect(status).toBe('infeasible');
    return mends.map((m) => mendWords(m, sayIn('mm')));
  };

  test.each([
    [
      'wider as well as narrower',
      strip([60, 30, 60], [90, 90], 200),
      press,
      /^legs\.1 of \d+(\.\d)? mm or more$/,
    ],
    ['an angle in degrees', strip([60, 60], [120]), press, /^angles\.0 of 92° or less$/],
    ['a pair of acute tools', strip([60, 60], [120]), press, /^a punch and a die of 30°, its V 6 mm wide$/],
    [
      'two walls joined on instead of bent',
      box130,
      DEFAULT_SHOP,
      /^north, south cut as pieces of their own, each joined on by a flange of 15 mm$/,
    ],
    ['a gooseneck', strip([60, 30, 60], [90, 90], 200), press, /^a gooseneck punch that leaves \d+ mm/],
    ['a narrower die', strip([4, 60], [90]), press, /^a die with a V 5 mm wide$/],
    ['a longer press', strip([40, 60], [90], 1200), press, /^a press 1200 mm long, with punches as long$/],
    [
      'more force',
      strip([40, 60], [90], 700),
      { ...press, press: { ...EXAMPLE_PRESS, force: 20 } },
      /^a press of \d+ kN$/,
    ],
    ['a longer punch', box130, press, /^a punch whose point is \d+ mm under the ram$/],
    [
      'thinner bars',
      strip([50, 8, 50], [90, 90]),
      { ...DEFAULT_SHOP, brake: null },
      /^folding bars 6 mm deep or less/,
    ],
    [
      'fingers for a straight jaw',
      box,
      { ...straightJaw, brakes: [] },
      /^fingers .* wide besides those there are$/,
    ],
    [
      'the second brake by its name',
      box130,
      straightJaw,
      /^a brake with \d+ mm clear under its beam in place of pan brake$/,
    ],
    [
      'a brake for bare hands',
      box,
      { ...DEFAULT_SHOP, brake: null, vise: null },
      /^a leaf brake with fingers, 200 mm long$/,
    ],
  ] as const)('%s', (_, plan, shop, words) => {
    expect(found(plan, shop)).toContainEqual(expect.stringMatching(words));
  });
});

test('what lies against the stop: an edge, then the outside of what is up', () => {
  const { steps } = planSequence(
    planned({ family: 'bent-strip', width: 100, legs: [30, 70, 30], angles: [90, 90] }),
    shopWith({ rearStop: 600 }),
  );
  expect(steps.map((s) => s.touches?.by)).toEqual(['edge', 'outside']);
});

test('a shop with nothing but hands: every part without a plan has its reasons, in words', () => {
  const { status, reasons, mends } = planSequence(box, { ...DEFAULT_SHOP, brake: null, vise: null });
  expect(status).toBe('infeasible');
  expect(reasons.map((r) => reasonWords(r, sayIn('mm')))).toContain(
    'north with base held: it cannot be done by hand',
  );
  expect(mends).not.toHaveLength(0);
});

describe('all that has to be known to see that no order is left', () => {
  const strip = (legs: readonly number[], angles: readonly number[]) =>
    planned({ family: 'bent-strip', width: 130, legs, angles });

  test('a Z: its first bend after the second, and its second after the first', () => {
    const { reasons } = planSequence(strip([35, 28, 50], [90, -90]), { ...DEFAULT_SHOP, vise: null });
    expect(reasons.map(({ bends, after, panel, flat }) => [...bends, ...after, panel, flat])).toEqual([
      ['leg-2', 'leg-3', 'leg-3', false],
      ['leg-2', 'leg-3', 'leg-3', false],
      ['leg-3', 'leg-2', 'leg-1', false],
      ['leg-3', 'leg-2', 'leg-1', false],
    ]);
  });

  test('a U too narrow for the punch: what runs into it, not that all of the line stays bare', () => {
    const plan = planSequence(strip([85, 50, 85], [90, 90]), pressShop([straight(10)], [vDie(8, 10)]));
    expect(said(plan)).toEqual([
      'leg-2 with leg-1 held: leg-3 runs into the punch',
      'leg-2 with leg-2 held: leg-3 runs into the punch',
      'leg-3 with leg-2 held: leg-1 runs into the punch',
      'leg-3 with leg-3 held: leg-1 runs into the punch',
    ]);
  });

  test('a hem before its wall is not told of a wall that does not go either way', () => {
    const hemmed = {
      family: 'open-box',
      length: 240,
      width: 160,
      height: 130,
      hem: { type: 'closed', length: 8 },
    };
    const { reasons } = planSequence(planned(hemmed), { ...DEFAULT_SHOP, vise: null });
    expect(new Set(reasons.flatMap((r) => r.bends))).toEqual(new Set(['north', 'south']));
  });

  test('tabs of one line: the stroke that bends them all, and the hem that leaves its end bare', () => {
    const channel = {
      family: 'hemmed-channel',
      length: 300,
      width: 120,
      height: 40,
      hem: { type: 'closed', length: 12 },
      endTabs: { length: 16 },
    };
    const { brake } = shopWith();
    const gaps = { ...(brake as Brake).gaps, end: 10 };
    const plan = planSequence(planned(channel), { ...shopWith({ gaps }), vise: null });
    expect(said(plan)).toContainEqual(
      expect.stringMatching(
        /^tab-west, tab-north-west, tab-south-west with base held: beside hem-north the fingers would leave 1\d(\.\d)? mm of the line bare, 10 mm at most$/,
      ),
    );
    expect(plan.mends.map((m) => mendWords(m, sayIn('mm')))).toContainEqual(
      expect.stringMatching(/^a line left bare for 1\d mm at its ends, dressed by hand afterwards$/),
    );
  });

  test('what is in the way as long as it is flat is called so', () => {
    const box = {
      family: 'open-box',
      length: 140,
      width: 90,
      height: 60,
      corner: 'tabbed',
      tabs: { length: 20 },
    };
    const plan = planSequence(planned(box), { ...DEFAULT_SHOP, vise: null });
    expect(said(plan)).toContainEqual(
      expect.stringMatching(
        /^tab-north-west, tab-south-west with north held: west, still flat, is in the way of the leaf, by \d/,
      ),
    );
  });
});
