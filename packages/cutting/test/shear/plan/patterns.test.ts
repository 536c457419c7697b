import { planShear, SHEAR_EFFORT, verifyShearPlan } from '@tinwright/cutting';
import { unlimitedValue } from '@tinwright/cutting/internal';
import { expect, test } from 'vitest';
import { guillotineFlaws } from '../kit/guillotine.js';
import { blank, RACK } from '../kit/orders.js';

const SHORT = { ...SHEAR_EFFORT, steps: { sheets: 300, offcut: 20, neat: 2 } };
const ANY = { length: 3000, stop: 3000 };

// ruin and recreate alone took 77 and 130 sheets of these in 10,000 steps
test.each([
  [455, 273, 72],
  [552, 335, 125],
])(
  '1,000 equal blanks of %d x %d: %d sheets, as few as the best pattern of a sheet allows',
  (x, y, sheets) => {
    const table = unlimitedValue({ x: 2000, y: 1000 }, [
      { w: x, h: y, value: 1 },
      { w: y, h: x, value: 1 },
    ]);
    expect(Math.ceil(1000 / Math.max(...table.best))).toBe(sheets);
    const blanks = [blank('lid', x, y, 1000)];
    const plans = planShear(blanks, RACK, ANY, SHORT);
    expect(plans[0]?.sheets).toHaveLength(sheets);
    expect(plans.flatMap((p) => verifyShearPlan(p, blanks, ANY))).toEqual([]);
    expect(guillotineFlaws(plans)).toBe('');
  },
);

test('patterns keep to the kerf, the trim, the grain and the longest cut', () => {
  const trim = { west: 5, east: 5, south: 5, north: 5 };
  const limits = { length: 1050, stop: 600 };
  const rack = {
    ...RACK,
    kerf: 2,
    sheets: RACK.sheets.map((s) => ({ ...s, trim, grain: 'x' as const })),
  };
  const blanks = [blank('lid', 455, 273, 300, 'x'), blank('end', 180, 96.4, 450)];
  const plans = planShear(blanks, rack, limits, SHORT);
  expect(plans.flatMap((p) => verifyShearPlan(p, blanks, limits))).toEqual([]);
  expect(plans[0]?.missing).toEqual([]);
});

test('more equal blanks than the sheets hold: every sheet is a full pattern, the rest is counted', () => {
  const rack = { ...RACK, sheets: RACK.sheets.map((s) => ({ ...s, count: 10 })) };
  const blanks = [blank('lid', 455, 273, 1000)];
  const plans = planShear(blanks, rack, ANY, SHORT);
  expect(plans[0]?.missing).toEqual([{ part: 'lid', count: 1000 - 140 }]);
  expect(plans.flatMap((p) => verifyShearPlan(p, blanks, ANY))).toEqual([]);
});

test('10,000 equal blanks: planned, every one there once', () => {
  const blanks = [blank('lid', 455, 273, 10_000)];
  const none = { ...SHORT, steps: { sheets: 0, offcut: 0, neat: 0 } };
  const plans = planShear(blanks, RACK, ANY, none);
  expect(plans[0]?.sheets).toHaveLength(Math.ceil(10_000 / 14));
  expect(plans.flatMap((p) => verifyShearPlan(p, blanks, ANY))).toEqual([]);
});

test('three kinds in hundreds: 31 sheets, where the area alone asks for 28.6', () => {
  const blanks = [blank('lid', 455, 273, 300), blank('end', 195, 160, 400), blank('grip', 452, 83, 200)];
  const plans = planShear(blanks, RACK, ANY, SHORT);
  expect(plans.flatMap((p) => verifyShearPlan(p, blanks, ANY))).toEqual([]);
  expect(plans[0]?.sheets.length).toBeLessThanOrEqual(31);
});
