import { curlOf, wireAllowance } from '@tinwright/core/family';
import { expect, test } from 'vitest';
import { wireAllowanceRange } from '../../src/bending/wired-edge.js';

const INCH = 25.4;

// NAVEDTRA 14251 (Steelworker vol. 2), tpub.com/steelworker2/22.htm: wire 1/8 in takes 2.5 x 1/8 = 5/16 in
test('a wired edge round 1/8 in takes 5/16 in', () => {
  expect(wireAllowance({ diameter: INCH / 8, allowance: null }) / INCH).toBeCloseTo(5 / 16, 12);
});

test('an allowance of its own is kept: the dripping pan of No. 8 wire has 3/8 in', () => {
  // Longfield, Sheet Metal Drafting, ch. IX: 2.5 times .162 in would be .405, the trade takes 3/8
  expect(wireAllowance({ diameter: 0.162 * INCH, allowance: (3 / 8) * INCH }) / INCH).toBeCloseTo(0.375, 12);
});

test('roll and lip together are as long as the allowance along the middle of the sheet', () => {
  for (const [diameter, thickness] of [
    [3, 0.5],
    [4, 1],
    [6, 1.2],
  ] as const) {
    const { angle, insideRadius, lip, terms } = curlOf({ diameter, allowance: null }, thickness);
    const arc = (angle * Math.PI * (insideRadius + thickness / 2)) / 180;
    expect(insideRadius).toBe(diameter / 2);
    expect(arc + lip).toBeCloseTo(2.5 * diameter, 9);
    expect(terms.allowance).toBeCloseTo(arc, 9);
    expect(terms.deduction).toBeCloseTo(2 * terms.setback - terms.allowance, 12);
    expect(angle).toBeGreaterThanOrEqual(180);
    expect(angle).toBeLessThanOrEqual(270);
  }
});

test('a roll never turns past three quarters; what is left runs on straight', () => {
  const { angle, lip } = curlOf({ diameter: 3, allowance: 9.6 }, 0.5);
  expect(angle).toBe(270);
  expect(lip).toBeCloseTo(9.6 - 1.5 * Math.PI * 1.75, 9);
});

test('the range of allowances reaches from half round to short of the wall', () => {
  const [least, most] = wireAllowanceRange(3, 1);
  expect(curlOf({ diameter: 3, allowance: least }, 1).angle).toBeCloseTo(180, 9);
  expect(curlOf({ diameter: 3, allowance: most }, 1).lip).toBeCloseTo(1.35, 9);
});
