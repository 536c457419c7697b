// Bends on a press brake against the closed forms of its geometry (derived; see the docstring of each).
import type { Point } from '@tinwright/core';
import { radians, sayIn } from '@tinwright/core/internal';
import { type BendStep, planSequence, type Sequence, type Shop, verifySequence } from '@tinwright/shop';
import { plainPrint, tellStep } from '@tinwright/words';
import { describe, expect, test, vi } from 'vitest';
import { offMiddle } from '../../src/sequence/answer/off-middle.js';
import { toolBook } from '../../src/sequence/search/tool-book.js';
import type { Mounting, Station } from '../../src/sequence/stations/station.js';
import { contactAngle } from '../../src/sweep/contact.js';
import { rectangle } from '../../src/sweep/polygon.js';
import { pressTools } from '../../src/tools/press-tools.js';
import { gooseneck, pressShop, straight, vDie } from '../press-shop.js';
import { planned } from '../shops.js';

vi.setConfig({ testTimeout: 600_000 }); // plans by the dozen

const T = 1;
const V8 = vDie(8, 10);
const press = pressShop([straight(10)], [V8]).press;

/** Greatest value for which something holds, between two. */
function edge(low: number, high: number, holds: (v: number) => boolean): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i++) {
    const m = (a + b) / 2;
    if (holds(m)) a = m;
    else b = m;
  }
  return a;
}

/** A return of length f standing up at inside distance a, both sides rising by 45°. */
const clears = (a: number, f: number, punch = straight(10)): boolean => {
  if (press === null) return false;
  const tools = pressTools(press, { punch, die: V8, horns: null }, T, 0);
  const lip: readonly Point[] = rectangle(a, 0, a + T, f);
  const half = radians(45);
  return tools.punch.every((p) => contactAngle(lip, p.shape, half) > half);
};

describe('closed forms at 90 degrees', () => {
  test.each([30, 40, 60])('straight body, half 10: at %d inside a return up to a - 14.1', (a) => {
    expect(edge(0, 80, (f) => clears(a, f))).toBeCloseTo(a - Math.SQRT2 * 10, 2);
  });

  test.each([0, 5, 8])('relieved by %d past the middle: a return up to a + 1.41 of that', (relief) => {
    expect(edge(0, 80, (f) => clears(40, f, gooseneck(relief)))).toBeCloseTo(40 + Math.SQRT2 * relief, 2);
  });

  test('walls beside the punch go up to (ram height - half its width) / 1.41', () => {
    const tools = (height: number, half: number) =>
      pressTools(
        { ram: { half, height }, bed: { half: 30 } },
        { punch: straight(10), die: V8, horns: null },
        T,
        0,
      );
    const most = (height: number, half: number) =>
      edge(0, 200, (h) => {
        // the rear wall of a box whose far side stands at the line: it rises with its own side
        const wall = rectangle(0, 0, T, h);
        return contactAngle(wall, tools(height, half).ram, radians(45)) > radians(45);
      });
    expect(most(100, 15)).toBeGreaterThan(60.1);
    expect(most(100, 15)).toBeLessThan(100 * Math.SQRT2);
  });
});

function plan(part: object, shop: Shop): Sequence {
  const p = planned(part);
  const sequence = planSequence(p, shop);
  if (sequence.status !== 'infeasible') expect(verifySequence(p.flat, sequence.steps, shop)).toEqual([]);
  return sequence;
}

const channel = (flange: number, web: number) => ({
  family: 'bent-strip',
  width: 80,
  legs: [flange, web, flange],
  angles: [90, 90],
});

describe('channels', () => {
  test('flanges of 40 on a web of 30 do not go over a straight punch: a flange runs into it', () => {
    const sequence = plan(channel(40, 30), pressShop([straight(10)], [V8]));
    expect(sequence.status).toBe('infeasible');
    expect(sequence.reasons.map((r) => r.code)).toContain('punch');
  });

  test('they go over a punch relieved by 10 past the middle, not by 5', () => {
    expect(plan(channel(40, 30), pressShop([gooseneck(10)], [V8])).status).toBe('optimal');
    expect(plan(channel(40, 30), pressShop([gooseneck(5)], [V8])).status).toBe('infeasible');
  });

  test('with both punches in the shop the plan changes to the one that goes', () => {
    const sequence = plan(channel(40, 30), pressShop([straight(10), gooseneck(10)], [V8]));
    expect(sequence.steps.at(-1)?.press?.punch).toBe('relieved 10');
  });
});

describe('steps up and down again', () => {
  const step = (height: number) => ({
    family: 'bent-strip',
    width: 80,
    legs: [40, height, 40],
    angles: [90, -90],
  });
  const shop = pressShop([straight(10)], [vDie(16, 10)]);
  test('5 over a V of 16 does not go: the step is too short for the V', () => {
    const sequence = plan(step(5), shop);
    expect(sequence.status).toBe('infeasible');
    expect(sequence.reasons.map((r) => r.code)).toContain('flange-short');
  });

  test('V/2 + 2.5 + 2T, as fabricators advise, does', () => {
    expect(plan(step(16 / 2 + 2.5 + 2 * T + 1.5), shop).status).toBe('optimal');
  });
});

test('the force is told with its formula, and a press too weak is the reason', () => {
  const part = { family: 'bent-strip', width: 400, legs: [40, 40], angles: [90] };
  const [step] = plan(part, pressShop([straight(10)], [V8])).steps;
  // 1.48 x 410 N/mm2 x 400 mm x 1 mm2 / 8 mm, by hand
  const tensile = Number(/Rm (\d+)/.exec(step?.press?.forceFormula ?? '')?.[1]);
  expect(step?.press?.force).toBeCloseTo((1.48 * tensile * 400) / 8 / 1000, 6);
  expect(step?.press?.forceFormula).toContain('1.48');
  const weak = plan(part, pressShop([straight(10)], [V8], { force: 20 }));
  expect(weak.status).toBe('infeasible');
  expect(weak.reasons.map((r) => r.code)).toContain('force');
});

test('a gooseneck is told with the side its hollow lies on, a straight punch without', () => {
  const strip = planned({ family: 'bent-strip', width: 80, legs: [60, 60], angles: [90] });
  const told = (punch: Parameters<typeof pressShop>[0][number]) => {
    const [step] = planSequence(strip, pressShop([punch], [V8])).steps as [BendStep];
    const { settings } = tellStep(step, 'en', plainPrint(sayIn('mm')));
    return settings.find((s) => s.name === 'punch')?.text;
  };
  expect(told(gooseneck(8))).toMatch(/, its hollow towards you$/);
  expect(told(straight(10))).not.toContain('hollow');
});

describe('how far a bend stands off the middle of the press', () => {
  const group = (from: number, ...pieces: number[]) => ({ from, pieces, gap: 0, bare: [0, 0] as const });

  test.each([
    ['tools anywhere', null, 0],
    ['tools as long as the bend', [group(0, 100)], 0],
    ['735 of punch to its left, 265 of room on a press of 1000', [group(-700, 735)], 250],
    ['to its right', [group(0, 735)], -185],
    ['two groups: the middle is between their ends', [group(-300, 100), group(0, 100)], 0],
  ] as const)('%s', (_, tools, off) => {
    expect(offMiddle(tools, 100, 1000)).toBeCloseTo(off, 9);
  });
});

describe('a punch that ends beside a wall', () => {
  const book = toolBook();
  const stretch = { from: 0, to: Infinity, least: 95, most: 990, slack: [5, 5], covered: 100, past: [0, 0] };
  const chosen = (rack: readonly number[], balance: number | null) =>
    book(
      null,
      { stretches: [stretch] } as unknown as Mounting,
      { id: `press ${balance} ${rack}`, rack, gaps: { end: 5, inner: 2 }, balance } as unknown as Station,
    );

  test('the fewest pieces are taken off that leave the bend in the middle of the press', () => {
    const set = chosen([300, 200, 100, 50, 40, 20, 15, 10], 1000) as readonly (readonly number[])[];
    const wide = set.flat().reduce((a, b) => a + b, 0);
    expect(set.flat()).toHaveLength(7);
    expect(offMiddle([{ from: 0, pieces: set.flat(), gap: 0, bare: [0, 0] }], 100, 1000)).toBeCloseTo(0, 9);
    expect(wide).toBe(735 - 200);
  });

  test('where there is no other piece it stands as it can', () => {
    expect(chosen([800], 1000)).toBeNull();
  });

  test('a leaf brake is held down along its whole length', () => {
    expect(chosen([300, 200, 100, 50, 40, 20, 15, 10], null)).toBeNull();
  });
});

test('a channel that hooks over a gooseneck is told how it comes off', () => {
  const channel = planned({ family: 'bent-strip', width: 150, legs: [34, 30, 34], angles: [90, 90] });
  const { steps } = planSequence(channel, pressShop([gooseneck(10)], [V8]));
  const last = steps.at(-1) as BendStep;
  const { after } = tellStep(last, 'en', plainPrint(sayIn('mm')));
  expect(after).toEqual(['Take it off along the line, past the end of the punch.']);
});

test('over a line that is not bent yet the sheet goes on: no edge for the gauge', () => {
  const zigzag = planned({ family: 'bent-strip', width: 250, legs: [60, 60, 60, 60], angles: [45, -45, 45] });
  const shop = pressShop([straight(10)], [V8]);
  const { steps } = planSequence(zigzag, { ...shop, costs: { ...shop.costs, line: 0, gauge: 0 } });
  const [first, second] = steps as [BendStep, BendStep];
  expect([first.bends, first.touches]).toEqual([['leg-2'], { panel: 'leg-1', by: 'edge', at: 125 }]);
  expect([second.bends, second.held]).toEqual([['leg-4'], 'leg-3']);
  expect(second.touches).toBeNull();
  expect(second.press?.gauge).toBeNull();
});

describe('what is mounted on a press', () => {
  const shop = pressShop([straight(10)], [V8]);
  const { tools, tool, bend } = shop.costs;

  test('nothing at first: the first stroke mounts a die and what of the punch it takes', () => {
    const plan = planSequence(
      planned({ family: 'bent-strip', width: 60, legs: [40, 60], angles: [90] }),
      shop,
    );
    const [{ tools: groups }] = plan.steps as [BendStep];
    expect(groups?.map((g) => g.pieces)).toEqual([[50]]);
    expect(plan.seconds).toBe(tools + 2 * tool + bend);
  });

  test('a box whose walls are alike: tools that go between the last ones are mounted once', () => {
    const plan = planSequence(planned({ family: 'open-box', length: 120, width: 120, height: 30 }), shop);
    const sets = plan.steps.map((s) => s.tools?.flatMap((g) => g.pieces).join(' + '));
    expect(new Set(sets).size).toBe(1);
    const pieces = plan.steps[0]?.tools?.flatMap((g) => g.pieces) ?? [];
    const rest = planSequence(planned({ family: 'open-box', length: 120, width: 120, height: 30 }), {
      ...shop,
      costs: { ...shop.costs, tools: 0, tool: 0 },
    });
    expect(plan.seconds - rest.seconds).toBeCloseTo(tools + tool * (pieces.length + 1), 6);
  });
});
