// Parts whose answer is known from the geometry of the machine.

import type { PartPlan } from '@tinwright/core';
import {
  asked,
  corners,
  defineFamily,
  flange,
  type Outline,
  panel,
  polygon,
  rectangle,
  square,
  value,
} from '@tinwright/core/family';
import { planSequence, type Sequence, type Shop, verifySequence } from '@tinwright/shop';
import { describe, expect, test, vi } from 'vitest';
import { planned, shopWith } from '../shops.js';

vi.setConfig({ testTimeout: 600_000 }); // plans by the dozen

/** Plan, and hold the plan against the replay that shares nothing with it. */
function plan(part: PartPlan, shop: Shop): Sequence {
  const sequence = planSequence(part, shop);
  if (sequence.status !== 'infeasible') expect(verifySequence(part.flat, sequence.steps, shop)).toEqual([]);
  return sequence;
}

const order = (s: Sequence) => s.steps.map((step) => step.bends.join('+'));
const codes = (s: Sequence) => s.reasons.map((r) => r.code);

const box = (more: object = {}) =>
  planned({ family: 'open-box', length: 200, width: 120, height: 50, ...more });
const channel = (flange: number, web: number) =>
  planned({ family: 'bent-strip', width: 80, legs: [flange, web, flange], angles: [90, 90] });

describe('boxes', () => {
  test('an open box 200 x 120 x 50 goes with fingers; those of the last sides fill the inside length', () => {
    const sequence = plan(box(), shopWith());
    expect(sequence.status).toBe('optimal');
    const last = sequence.steps.slice(-2);
    for (const step of last) {
      const wide = step.tools?.flatMap((g) => g.pieces).reduce((a, b) => a + b, 0) ?? 0;
      const inside = step.bends[0] === 'north' || step.bends[0] === 'south' ? 198 : 118;
      expect(wide).toBeLessThan(inside);
      expect(wide).toBeGreaterThan(inside - 25);
    }
    // opposite sides follow each other: no finger is changed between them
    expect(new Set(last.map((s) => s.bends[0]))).toSatisfy(
      (s: Set<string>) => (s.has('north') && s.has('south')) || (s.has('west') && s.has('east')),
    );
  });

  test('with one solid jaw the third side cannot be bent: a wall stands where the jaw has to be', () => {
    const sequence = plan(box(), shopWith({ fingers: [1000] }));
    expect(sequence.status).toBe('infeasible');
    expect(sequence.reasons.length).toBeGreaterThan(0);
  });

  test('walls one millimetre higher than the clear height run into the beam', () => {
    // 75 under the beam, margin 0.5 and two thousandths of the blank kept
    expect(plan(box({ height: 76 }), shopWith()).status).toBe('infeasible');
    expect(codes(plan(box({ height: 76 }), shopWith()))).toContain('beam');
    expect(plan(box({ height: 73 }), shopWith()).status).toBe('optimal');
  });

  test('with inward returns of 8 all round: returns first, and 8 at either end of the last lines stay bare', () => {
    const sequence = plan(box({ flangeReturn: 8 }), shopWith());
    expect(sequence.status).toBe('optimal');
    const place = (id: string) => order(sequence).findIndex((b) => b.split('+').includes(id));
    for (const side of ['north', 'south', 'east', 'west'])
      expect(place(`return-${side}`)).toBeLessThan(place(side));
  });

  test('with inward returns of 15 the last line is too bare for fingers', () => {
    const sequence = plan(box({ flangeReturn: 15 }), shopWith());
    expect(sequence.status).toBe('infeasible');
    expect(codes(sequence)).toContain('fingers');
  });

  test('a shop that lets 25 mm stay bare bends it', () => {
    expect(plan(box({ flangeReturn: 15 }), shopWith({ gaps: { end: 25, inner: 6 } })).status).toBe('optimal');
  });

  test('a hem goes before the walls that would stand at its ends', () => {
    const sequence = plan(box({ hems: { north: { type: 'closed', length: 10 } } }), shopWith());
    expect(sequence.status).toBe('optimal');
    const places = order(sequence);
    expect(places.indexOf('hem-north')).toBeLessThan(places.indexOf('east'));
    expect(places.indexOf('hem-north')).toBeLessThan(places.indexOf('west'));
    // folded, then closed at once
    expect(sequence.steps.filter((s) => s.bends[0] === 'hem-north').map((s) => s.action)).toEqual([
      'fold',
      'close',
    ]);
  });
});

describe('channels, foot 60, upright 35', () => {
  test.each([
    [80, 50, 'infeasible'],
    [30, 50, 'optimal'],
    [70, 70, 'optimal'],
  ] as const)('flanges of %d on a web of %d: %s', (flange, web, status) => {
    expect(plan(channel(flange, web), shopWith()).status).toBe(status);
  });

  test('30 on 50 goes only with the web turned by the leaf, 70 on 70 only with it under the fingers', () => {
    const second = (s: Sequence) => s.steps.at(-1);
    // leg-2 is the web: the second bend holds the flange, or the web
    expect(second(plan(channel(30, 50), shopWith()))?.held).not.toBe('leg-2');
    expect(second(plan(channel(70, 70), shopWith()))?.held).toBe('leg-2');
  });
});

test('a box with its lid hanging on a wall cannot be closed', () => {
  const closed = defineFamily({
    name: 'closed-box',
    values: { length: value.size('along x') },
    build: ({ length }) => [
      panel('base', rectangle(length, 120)),
      ...(['north', 'south', 'east', 'west'] as const).map((s) => flange(s, ['base', s], { height: 60 })),
      flange('lid', ['north', 'far'], { height: 116, inset: [3, 3] }),
      corners(['base'], square(0.5)),
      asked('length', length, 'x', { panels: ['base', 'east', 'west'] }),
    ],
    describe: { title: 'closed box', summary: '', example: { length: 200 } },
  });
  const part = planned({ family: 'closed-box', length: 240 }, {}, [closed]);
  expect(plan(part, shopWith({ clearHeight: 400, beam: 60 })).status).toBe('infeasible');
});

test('a tab between two prongs cannot be bent on a full leaf: the prongs lie on it', () => {
  const outline: Outline = polygon(
    [
      [0, 0],
      [120, 0],
      [120, 100],
      [80, 100],
      [80, 60],
      [40, 60],
      [40, 100],
      [0, 100],
    ],
    ['south', 'east', 'prong-east', 'slot-east', 'root', 'slot-west', 'prong-west', 'west'],
  );
  const lanced = defineFamily({
    name: 'lanced-tab',
    values: { tab: value.size('its height') },
    build: ({ tab }) => [
      panel('base', outline),
      flange('tab', ['base', 'root'], { height: tab, inset: [2, 2] }),
      asked('tab', tab, 'z', { panels: ['base', 'tab'] }),
    ],
    describe: { title: 'tab', summary: '', example: { tab: 20 } },
  });
  const sequence = plan(planned({ family: 'lanced-tab', tab: 20 }, {}, [lanced]), shopWith());
  expect(sequence.status).toBe('infeasible');
  expect(codes(sequence)).toEqual(['leaf', 'bed']);
  expect(sequence.reasons[0]?.panel).toBe('base');
});

test('a spiral of parallel bends goes from the inside outwards', () => {
  const sequence = plan(
    planned({ family: 'bent-strip', width: 80, legs: [12, 60, 70, 80], angles: [90, 90, 90] }),
    shopWith({ finger: { foot: 30, upright: 18, noseAngle: 45, noseRadius: 0.5 }, beam: 18 }),
  );
  expect(sequence.status).toBe('optimal');
  expect(order(sequence).at(-1)).toBe('leg-4');
});

test('a wall that reaches over a line has to rise before the line can be bent: more done makes more possible', () => {
  // the north wall widens: its far end reaches over the east line on the flat, and stands above a narrow leaf once up
  const gadget = defineFamily({
    name: 'wall-first',
    values: { wall: value.size('its height') },
    build: ({ wall }) => [
      panel('base', rectangle(200, 80)),
      flange('north', ['base', 'north'], { height: wall, inset: [25, 25], spread: 50 }),
      flange('east', ['base', 'east'], { height: 22 }),
      asked('wall', wall, 'z', { panels: ['base', 'north'] }),
    ],
    describe: { title: 'wall', summary: '', example: { wall: 60 } },
  });
  const part = planned({ family: 'wall-first', wall: 60 }, {}, [gadget]);
  const narrow = { leaf: { width: 20, stop: 135 } };
  expect(order(plan(part, shopWith(narrow)))).toEqual(['north', 'east']);
  // with a wide leaf it never goes
  expect(plan(part, shopWith()).status).toBe('infeasible');
});
