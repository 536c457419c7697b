// Sources of the least radius that disagree: the profile chooses, both are named.
import type { PartPlan } from '@tinwright/core';
import { shopFindings } from '@tinwright/shop/internal';
import { describe, expect, test } from 'vitest';
import { told } from '../../../../tests/kit/told.js';
import { planned } from '../shops.js';
import { STRICT, sheet, USUAL } from './kit.js';

const strip = (material: string, thickness: number, radius: number) =>
  planned(
    { family: 'bent-strip', width: 100, legs: [60, 60], angles: [90] },
    sheet(thickness, radius, material),
  );
const found = (part: PartPlan, shop: typeof STRICT) =>
  shopFindings(part, shop).filter((f) => f.code === 'radius-strict');

describe('304 of 1.6 mm bent to 2 mm', () => {
  const part = strip('stainless-304', 1.6, 2);

  test('profile strict: 0.125 in by the aircraft table, both sources named', () => {
    const [finding, ...more] = found(part, STRICT);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ severity: 'warning', value: 2, unit: 'mm' });
    expect(finding?.limit).toBeCloseTo(0.125 * 25.4, 9);
    expect(told(finding)?.source).toMatch(
      /bjg-design\.com.*\(profile strict\);.*makers' guides.*\(profile usual\)$/,
    );
  });

  test('profile usual: nothing', () => expect(found(part, USUAL)).toEqual([]));
});

test('under the usual limit too: told once, by the check of the alloy', () => {
  expect(found(strip('stainless-304', 1.6, 1), STRICT)).toEqual([]);
});

test('a metal whose sources agree: nothing', () => {
  expect(found(strip('brass', 1, 1), STRICT)).toEqual([]);
});
