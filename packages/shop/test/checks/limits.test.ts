// Every rule with a number at its limit: it passes there and fails a hundredth of a millimetre past it. Limits typed
// again from the sources named beside them.

import type { Shop } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { planned } from '../shops.js';
import { found, LASER_TABLE, PRESS_SHOP, STRICT, sheet, testPart, USUAL } from './kit.js';

type Plan = ReturnType<typeof planned>;

interface Case {
  readonly code: string;
  readonly name: string;
  readonly part: (v: number) => Plan;
  readonly shop?: Shop;
  /** The size of the part at which it still passes. */
  readonly at: number;
  /** Past it the rule fails: below it, or above. */
  readonly fails: 'below' | 'above';
  readonly value: number;
  readonly limit: number;
  readonly severity: 'error' | 'warning' | 'note';
  readonly source: RegExp;
}

const strip = (legs: readonly number[], angles: readonly number[], job: object = {}) =>
  planned({ family: 'bent-strip', width: 80, legs, angles }, job);
const box = (more: object, job: object = {}) =>
  planned({ family: 'open-box', length: 200, width: 120, height: 50, ...more }, job);
const holed = (part: object, job: object = {}) =>
  testPart({ family: 'holed-plate', from: 30, hole: 8, ...part }, job);
const cut = (part: object, job: object = {}) =>
  testPart({ family: 'cut-plate', notch: 6, deep: 10, prong: 30, long: 20, ...part }, job);
const noTable = { ...STRICT, table: null };

const CASES: readonly Case[] = [
  // mould line, then 2 mm of bend (R + T), then the limit, then half the hole
  {
    code: 'hole-near-bend',
    name: 'strict: 3T + R',
    part: (from) => holed({ from, hole: 8 }),
    at: 2 + 4 + 4,
    fails: 'below',
    value: 4,
    limit: 4,
    severity: 'warning',
    source: /^3T \+ R by .*\(profile strict\); 2T \+ R.* by metal-stamping-die\.com.*\(profile usual\)$/,
  },
  {
    code: 'hole-near-bend',
    name: 'usual: 2T + R',
    part: (from) => holed({ from, hole: 8 }),
    shop: USUAL,
    at: 2 + 3 + 4,
    fails: 'below',
    value: 3,
    limit: 3,
    severity: 'warning',
    source: /^2T \+ R.*\(profile usual\); 3T \+ R .*\(profile strict\)$/,
  },
  {
    code: 'hole-near-bend',
    name: 'usual, from 25 mm: 2.5T + R',
    part: (from) => holed({ from, hole: 25 }),
    shop: USUAL,
    at: 2 + 3.5 + 12.5,
    fails: 'below',
    value: 3.5,
    limit: 3.5,
    severity: 'warning',
    source: /2\.5T \+ R \(25 mm\)/,
  },
  {
    code: 'slot-near-bend',
    name: 'strict, towards a bend: 3T + R',
    part: (short) => testPart({ family: 'slotted-plate', short, slot: 3 }),
    at: 2 + 4,
    fails: 'below',
    value: 4,
    limit: 4,
    severity: 'warning',
    source: /^4T \+ R, 3T \+ R, from memory/,
  },
  {
    code: 'slot-near-bend',
    name: 'strict, along a bend: 4T + R',
    // the middle of a slot 1.2 wide off a tab's mould line
    part: (at) =>
      planned({ family: 'divider', length: 200, height: 60, tabs: { length: 16 }, slots: { at: [at] } }),
    at: 2 + 5 + 0.6,
    fails: 'below',
    value: 5,
    limit: 5,
    severity: 'warning',
    source: /^4T \+ R/,
  },
  {
    code: 'slot-near-bend',
    name: 'usual: 2.5T + R',
    part: (at) =>
      planned({ family: 'divider', length: 200, height: 60, tabs: { length: 16 }, slots: { at: [at] } }),
    shop: USUAL,
    at: 2 + 3.5 + 0.6,
    fails: 'below',
    value: 3.5,
    limit: 3.5,
    severity: 'warning',
    source: /^2\.5T \+ R by design guides \(profile usual\)/,
  },
  {
    code: 'hole-small',
    name: 'T',
    part: (hole) => holed({ hole }, sheet(1.5)),
    at: 1.5,
    fails: 'below',
    value: 1.5,
    limit: 1.5,
    severity: 'warning',
    source: /^T, 2T by fabricators' pages/,
  },
  {
    code: 'hole-small',
    name: '2T in stainless',
    part: (hole) => holed({ hole }, sheet(0.8, 0.8, 'stainless-304')),
    at: 1.6,
    fails: 'below',
    value: 1.6,
    limit: 1.6,
    severity: 'warning',
    source: /judgement/,
  },
  {
    code: 'hole-under-table',
    name: 'the smallest hole of the table',
    part: (hole) => holed({ hole }),
    at: 6,
    fails: 'below',
    value: 6,
    limit: 6,
    severity: 'note',
    source: /^shop file$/,
  },
  {
    code: 'gap-under-kerf',
    name: 'the kerf of the table',
    part: (notch) => cut({ notch }),
    at: 1.3,
    fails: 'below',
    value: 1.3,
    limit: 1.3,
    severity: 'note',
    source: /^shop file$/,
  },
  {
    code: 'web-narrow',
    name: 'laser, hole to hole: T',
    part: (second) => holed({ hole: 8, second }, sheet(1.2)),
    shop: { ...STRICT, table: LASER_TABLE },
    at: 8 + 1.2,
    fails: 'below',
    value: 1.2,
    limit: 1.2,
    severity: 'warning',
    source: /^T by tuanthinh\.net$/,
  },
  {
    code: 'web-narrow',
    name: 'plasma, hole to edge: 1.5T and 2 mm',
    part: (second) => holed({ hole: 8, second }),
    at: 26 - 2, // the second hole from the south edge, 30 below the first
    fails: 'above',
    value: 2,
    limit: 2,
    severity: 'warning',
    source: /^1\.5T, 2 mm by newayprecision\.com$/,
  },
  {
    code: 'web-narrow',
    name: 'punched, strict: 2T',
    part: (second) => holed({ hole: 8, second }),
    shop: noTable,
    at: 8 + 2,
    fails: 'below',
    value: 2,
    limit: 2,
    severity: 'warning',
    source: /^2T, from memory \(profile strict\); 1\.5T, from memory \(profile usual\)$/,
  },
  {
    code: 'web-narrow',
    name: 'punched, usual: 1.5T',
    part: (second) => holed({ hole: 8, second }),
    shop: { ...USUAL, table: null },
    at: 8 + 1.5,
    fails: 'below',
    value: 1.5,
    limit: 1.5,
    severity: 'warning',
    source: /^1\.5T, from memory \(profile usual\); 2T, from memory \(profile strict\)$/,
  },
  {
    code: 'notch-narrow',
    name: '1 mm in thin sheet',
    part: (notch) => cut({ notch, deep: 3 }, sheet(0.8)),
    at: 1,
    fails: 'below',
    value: 1,
    limit: 1,
    severity: 'warning',
    source: /^T, 1 mm by a fabricator's guide$/,
  },
  {
    code: 'notch-narrow',
    name: 'T in thicker sheet',
    part: (notch) => cut({ notch, deep: 3 }, sheet(1.5)),
    at: 1.5,
    fails: 'below',
    value: 1.5,
    limit: 1.5,
    severity: 'warning',
    source: /^T, 1 mm/,
  },
  {
    code: 'notch-deep',
    name: 'five widths',
    part: (deep) => cut({ notch: 4, deep }),
    at: 20,
    fails: 'above',
    value: 4,
    limit: 4,
    severity: 'note',
    source: /^L \/ 5 by a fabricator's guide/,
  },
  {
    code: 'tab-narrow',
    name: '3.2 mm in thin sheet',
    part: (prong) => cut({ prong, long: 10 }),
    at: 3.2,
    fails: 'below',
    value: 3.2,
    limit: 3.2,
    severity: 'warning',
    source: /^2T, 3\.2 mm by a fabricator's guide/,
  },
  {
    code: 'tab-narrow',
    name: '2T in thicker sheet',
    part: (prong) => cut({ prong, long: 10 }, sheet(2)),
    at: 4,
    fails: 'below',
    value: 4,
    limit: 4,
    severity: 'warning',
    source: /^2T, 3\.2 mm by a fabricator's guide/,
  },
  {
    code: 'tab-long',
    name: 'five widths',
    part: (long) => cut({ prong: 10, long }),
    at: 50,
    fails: 'above',
    value: 10,
    limit: 10,
    severity: 'note',
    source: /^L \/ 5 by a fabricator's guide/,
  },
  {
    code: 'hem-short',
    name: 'strict: 6T',
    part: (length) => box({ hem: { type: 'closed', length } }),
    at: 6,
    fails: 'below',
    value: 6,
    limit: 6,
    severity: 'warning',
    source: /^6T by design guides \(profile strict\); 4T by general practice, from memory/,
  },
  {
    code: 'hem-short',
    name: 'usual: 4T',
    part: (length) => box({ hem: { type: 'closed', length } }),
    shop: USUAL,
    at: 4,
    fails: 'below',
    value: 4,
    limit: 4,
    severity: 'warning',
    source: /^4T by general practice, from memory \(profile usual\); 6T/,
  },
  {
    code: 'hem-near-bend',
    name: '5T + R + radius of the hem, between the tangent lines',
    // the wall less R + T at its bend and T at the closed fold
    part: (height) => box({ height, hem: { type: 'closed', length: 5 } }),
    at: 6 + 2 + 1,
    fails: 'below',
    value: 6,
    limit: 6,
    severity: 'warning',
    source: /^5T \+ R \+ R\(hem\)/,
  },
  {
    code: 'hem-tight',
    name: '5052-H32 of 1.2 mm: 1T',
    part: (gap) => box({ hem: { type: 'open', length: 12, gap } }, sheet(1.2, 1.6, 'aluminium-5052-h32')),
    at: 2.4,
    fails: 'below',
    value: 1.2,
    limit: 1.2,
    severity: 'warning',
    source: /Aluminum Design Manual 2005 table 3-1/,
  },
  {
    code: 'leg-short',
    name: 'strict: 4R',
    part: (leg) => strip([leg, 60], [90], sheet(1, 3)),
    at: 12,
    fails: 'below',
    value: 12,
    limit: 12,
    severity: 'warning',
    source: /^4R by DIN 6935, from memory \(profile strict\); 2T \+ R by general practice/,
  },
  {
    code: 'leg-short',
    name: 'usual: 2T + R',
    part: (leg) => strip([leg, 60], [90], sheet(1, 3)),
    shop: USUAL,
    at: 5,
    fails: 'below',
    value: 5,
    limit: 5,
    severity: 'warning',
    source: /^2T \+ R by general practice \(profile usual\)/,
  },
  {
    code: 'flange-low',
    name: 'a fiftieth of a panel of 300 mm and more',
    part: (leg) => strip([400, leg], [90]),
    shop: { ...STRICT, brake: null },
    at: 398 / 50 + 0.04, // mould line to mould line 400
    fails: 'below',
    value: 8,
    limit: 8,
    severity: 'note',
    source: /design guide; L \/ 50, judgement/,
  },
  {
    code: 'radius-made',
    name: 'more than 0.2 mm a bend off: the leaf makes 1.5 mm at most',
    part: (radius) => strip([60, 60], [90], sheet(1, radius)),
    at: 1.5 + 0.2 / (2 - Math.PI / 2),
    fails: 'above',
    value: 0.2,
    limit: 0.2,
    severity: 'warning',
    source: /R = S \/ tan\(A\/2\) − T, derived/,
  },
  {
    code: 'offset-small',
    name: '2T from face to face',
    // 45°: offset = web · sin 45° − T (1 − cos 45°)
    part: (web) => strip([40, web, 40], [45, -45]),
    at: (2 + 1 - Math.SQRT1_2) * Math.SQRT2,
    fails: 'below',
    value: 2,
    limit: 2,
    severity: 'warning',
    source: /^2T by fabricators' pages/,
  },
  {
    code: 'blank-large',
    name: 'sheets of 2000 × 1000, turned the better way',
    part: (width) =>
      planned({ family: 'gusset-end', width, shoulderHeight: 300, height: 999, crownWidth: 200 }),
    at: 2000,
    fails: 'above',
    value: 2000,
    limit: 2000,
    severity: 'error',
    source: /^shop file$/,
  },
  {
    code: 'cut-large',
    name: 'table of 1250, shear of 1000',
    part: (width) =>
      planned({ family: 'gusset-end', width, shoulderHeight: 300, height: 999, crownWidth: 200 }),
    at: 1250,
    fails: 'above',
    value: 1250,
    limit: 1250,
    severity: 'warning',
    source: /^shop file$/,
  },
  {
    code: 'cut-large',
    name: 'shear of 1000 alone',
    part: (width) =>
      planned({ family: 'gusset-end', width, shoulderHeight: 300, height: 500, crownWidth: 200 }),
    shop: noTable,
    at: 1000,
    fails: 'above',
    value: 1000,
    limit: 1000,
    severity: 'warning',
    source: /^shop file$/,
  },
  {
    code: 'corner-gap',
    name: '0.5 mm on a hand brake',
    part: (gap) => box({ corner: 'lap', gap }),
    at: 0.5,
    fails: 'below',
    value: 0.5,
    limit: 0.5,
    severity: 'warning',
    source: /^0\.5 mm, from memory/,
  },
  {
    code: 'corner-gap',
    name: '0.1 mm for laser and press',
    part: (gap) => box({ corner: 'lap', gap }),
    shop: { ...PRESS_SHOP, table: LASER_TABLE },
    at: 0.1,
    fails: 'below',
    value: 0.1,
    limit: 0.1,
    severity: 'warning',
    source: /^0\.1 mm, from memory/,
  },
  {
    code: 'relief-narrow',
    name: 'T and 1 mm beside metal that stays',
    part: (beside) => testPart({ family: 'lanced-plate', beside }, sheet(1.5)),
    at: 1.5,
    fails: 'below',
    value: 1.5,
    limit: 1.5,
    severity: 'warning',
    source: /^T, 1 mm, from memory/,
  },
];

describe.each(CASES.map((c) => [`${c.code}: ${c.name}`, c] as const))('%s', (_, c) => {
  const shop = c.shop ?? STRICT;
  const step = c.fails === 'below' ? -0.01 : 0.01;

  test('passes at its limit', () => {
    expect(found(c.code, c.part(c.at + (c.fails === 'below' ? 1e-9 : -1e-9)), shop)).toBeUndefined();
  });

  test('fails past it, with number, limit and source', () => {
    const finding = found(c.code, c.part(c.at + step), shop);
    expect(finding?.severity).toBe(c.severity);
    expect(Math.abs((finding?.value as number) - c.value)).toBeLessThan(0.02);
    expect(Math.abs((finding?.limit as number) - c.limit)).toBeLessThan(0.02);
    expect(finding?.source).toMatch(c.source);
    expect(finding?.fix).not.toBe('');
    expect(finding?.at).toHaveLength(2);
  });
});
