import { din6935, kFactor } from '@tinwright/core';
import { expect, test } from 'vitest';
import { doubtOf } from '../../src/bending/doubt.js';

const bend = { thickness: 1, insideRadius: 1, angle: 90 };

test('a rule that does not know its error is off by what the furthest axis of the handbooks is, 0.33 or 0.5 of the sheet', () => {
  const off = (k: number) => doubtOf(kFactor(k), bend, kFactor(k).terms(bend).allowance);
  expect(off(0.33)).toBeCloseTo((Math.PI / 2) * 0.17, 12);
  expect(off(0.5)).toBeCloseTo((Math.PI / 2) * 0.17, 12);
  expect(off(0.4)).toBeCloseTo((Math.PI / 2) * 0.1, 12);
  const { allowance } = din6935.terms(bend);
  expect(doubtOf(din6935, bend, allowance)).toBeGreaterThan(0.1);
});
