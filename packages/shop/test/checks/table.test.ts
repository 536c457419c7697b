// The table of good making in the reference, row by row: which rule covers it, or why none does.

import { existsSync, readFileSync } from 'node:fs';
import { CHECKS, planJob, readJob } from '@tinwright/core';
import { DEFAULT_SHOP, JOINT_CHECKS, SHOP_CHECKS, type Shop } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { planned } from '../shops.js';
import { findingsOf, STRICT, sheet, testPart } from './kit.js';

/** Codes of rules that cover a row. */
const COVERED: Readonly<Record<number, readonly string[]>> = {
  1: ['radius-small', 'hem-tight', 'radius-made'],
  2: ['tolerance'],
  3: ['hole-near-bend', 'slot-near-bend'],
  4: ['hole-small', 'hole-under-table'],
  8: ['relief-narrow', 'relief-shallow'],
  9: ['notch-narrow', 'notch-deep', 'gap-under-kerf'],
  10: ['tab-narrow', 'tab-long'],
  13: ['hem-short'],
  14: ['hem-near-bend'],
  18: ['offset-small'],
  23: ['corner-gap'],
  29: ['web-narrow'],
  30: ['blank-large', 'cut-large', 'sheet-thick'],
  32: ['grain'],
  34: ['leg-short'],
  35: ['flange-low'],
};

/** Rows without a rule, and why. */
const NOT_COVERED: Readonly<Record<number, string>> = {
  5: 'no part has a countersink or bore',
  6: 'whether the die holds the flange is found by the planner',
  7: 'whether the leaf holds the flange is found by the planner',
  11: 'slots are made to fit by the family, and the fit is measured where two parts cross',
  12: 'the clearance asked and found at joints is measured by the core',
  15: 'whether the jaw lifts over a folded hem is found by the planner',
  16: 'whether a step clears the die is found by the planner',
  17: 'whether a step clears leaf and bed is found by the planner',
  19: 'whether a channel clears the tools depends on the order of bends: the planner tells',
  20: 'whether a box clears beam or ram depends on the order of bends: the planner tells',
  21: 'which fingers stand where depends on the order of bends: the planner tells',
  22: 'returns round a box depend on the order of bends: the planner tells',
  24: 'what lies over the line in front of the leaf depends on the order of bends: the planner tells',
  25: 'a tab inside a panel is told by the planner, which finds the panel on the leaf',
  26: 'a wired edge is rolled to its wire; curls without one are not made',
  27: 'curls without a wire are not made',
  28: 'no part has dimples',
  31: 'turning and setting up cost time, which the planner counts',
  33: 'a long order of bends costs time, which the planner counts',
};

const ROWS = 35;

test('every row is covered, or listed with a reason', () => {
  for (let row = 1; row <= ROWS; row++)
    expect(
      [COVERED[row] !== undefined, NOT_COVERED[row] !== undefined].filter(Boolean),
      `row ${row}`,
    ).toHaveLength(1);
});

const REFERENCE = new URL('../../../../../shared/reference/brake-and-sequence.md', import.meta.url);

test.runIf(existsSync(REFERENCE))('the reference has these rows', () => {
  const text = readFileSync(REFERENCE, 'utf8');
  const rows = [...text.matchAll(/^\| (\d+) \|/gm)].map(([, n]) => Number(n));
  expect(rows).toEqual(Array.from({ length: ROWS }, (_, i) => i + 1));
});

const strip = (legs: readonly number[], angles: readonly number[], job: object = {}, width = 80) =>
  planned({ family: 'bent-strip', width, legs, angles }, job);
const box = (more: object, job: object = {}) =>
  planned({ family: 'open-box', length: 200, width: 120, height: 50, ...more }, job);
const flat = (width: number, height: number) =>
  planned({ family: 'gusset-end', width, shoulderHeight: 50, height, crownWidth: 80 });
const cut = (part: object) =>
  testPart({ family: 'cut-plate', notch: 6, deep: 10, prong: 30, long: 20, ...part });

/** A part, and where needed a shop, that each rule speaks of; a new rule is a row here too. */
const SPOKEN: Readonly<Record<string, readonly [ReturnType<typeof box>, Shop?]>> = {
  'hem-tight': [box({ hem: { type: 'closed', length: 12 } }, sheet(1.2, 1.6, 'aluminium-5052-h32'))],
  'radius-made': [strip([60, 60], [90], sheet(1, 4))],
  'radius-strict': [strip([60, 60], [90], sheet(1.2, 1.2, 'aluminium-5052-h32'))],
  tolerance: [box({})],
  'hole-near-bend': [testPart({ family: 'holed-plate', from: 7, hole: 5 })],
  'slot-near-bend': [testPart({ family: 'slotted-plate', short: 4, slot: 3 })],
  'hole-small': [testPart({ family: 'holed-plate', from: 30, hole: 0.8 })],
  'hole-under-table': [testPart({ family: 'holed-plate', from: 30, hole: 4 })],
  'relief-narrow': [testPart({ family: 'lanced-plate', beside: 0.5 })],
  'relief-shallow': [box({})],
  'notch-narrow': [cut({ notch: 0.8, deep: 3 })],
  'notch-deep': [cut({ notch: 2, deep: 20 })],
  'gap-under-kerf': [cut({ notch: 1.1, deep: 3 })],
  'tab-narrow': [cut({ prong: 3, long: 10 })],
  'tab-long': [cut({ prong: 6, long: 40 })],
  'hem-short': [box({ hem: { type: 'closed', length: 4 } })],
  'hem-near-bend': [box({ height: 8, hem: { type: 'closed', length: 4 } })],
  'offset-small': [strip([40, 3, 40], [45, -45])],
  'corner-gap': [box({ corner: 'lap', gap: 0.2 })],
  'web-narrow': [testPart({ family: 'holed-plate', from: 30, hole: 8, second: 9 })],
  'blank-large': [flat(2100, 500)],
  'cut-large': [flat(1500, 500)],
  'sheet-thick': [strip([60, 60], [90], sheet(1.4))],
  grain: [box({}, sheet(1, 1, 'stainless-304'))],
  'leg-short': [strip([9, 60], [90], sheet(1, 3))],
  'flange-low': [strip([500, 8], [90])],
};

// that of electrodes needs a joint: other tests have one
const ELECTRODE = 'weld-electrode';

describe('every rule speaks of some part', () => {
  test.each(Object.entries(SPOKEN))('%s', (code, [plan, shop = STRICT]) => {
    expect(findingsOf(plan, shop).map((f) => f.code)).toContain(code);
  });

  test('every rule has its row', () => {
    const codes = SHOP_CHECKS.map((c) => c.code).filter((c) => c !== ELECTRODE);
    expect(Object.keys(SPOKEN).toSorted()).toEqual(codes.toSorted());
    expect(JOINT_CHECKS).toHaveLength(2);
  });

  test('what covers a row of the reference is a rule of the shop, but for the inside radius', () => {
    const codes = SHOP_CHECKS.map((c) => c.code);
    const missing = Object.values(COVERED)
      .flat()
      .filter((code) => !codes.includes(code));
    expect(missing).toEqual(['radius-small']);
  });

  test('the inside radius against its alloy needs no shop: the core says it', () => {
    const { findings } = planJob(
      readJob({
        units: 'mm',
        stock: { material: 'mild-steel', thickness: 1 },
        bending: { rule: 'k-factor', insideRadius: 0.5 },
        parts: [{ name: 'part', family: 'bent-strip', width: 80, legs: [40, 40], angles: [90] }],
      }),
    );
    expect(findings.map((f) => f.code)).toContain('radius-small');
    expect(CHECKS).toHaveLength(3);
  });

  test('a sound part in a shop that has all it takes has notes only', () => {
    const sound = strip([40, 60], [90], {}, 200);
    expect(findingsOf(sound, DEFAULT_SHOP).filter((f) => f.severity !== 'note')).toEqual([]);
  });
});
