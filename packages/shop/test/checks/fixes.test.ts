// Fixes that are no size of the family: stock, inside radius, kind of hem. Applied as they are said, nothing is found.

import { EXAMPLE_PRESS, type Shop } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { planned } from '../shops.js';
import { found, STRICT, sheet, USUAL } from './kit.js';

const strip = (job: object) =>
  planned({ family: 'bent-strip', width: 600, legs: [60, 60], angles: [90] }, job);

/** The number a fix says after these words. */
function number(fix: string | undefined, words: RegExp): number {
  const [, value] = words.exec(fix ?? '') ?? [];
  expect(value, fix).toBeDefined();
  return Number(value);
}

describe.each([
  ['strict', STRICT],
  ['usual', USUAL],
] as const)('profile %s', (_, profile) => {
  const shop: Shop = { ...profile, vise: null };

  test.each([2.5, 3, 6])('an inside radius of %d mm: the one the brake makes', (radius) => {
    const finding = found('radius-made', strip(sheet(1, radius)), shop);
    const made = number(finding?.fix, /^lay it out with insideRadius ([\d.]+) mm$/);
    expect(found('radius-made', strip(sheet(1, made)), shop)).toBeUndefined();
  });

  test('a hem folded flat that cracks: an open one as wide as said', () => {
    const tray = (hem: object) =>
      planned({ family: 'open-box', length: 200, width: 120, height: 50, hem }, sheet(1, 1, 'stainless-304'));
    const finding = found('hem-tight', tray({ type: 'closed', length: 12 }), shop);
    const gap = number(finding?.fix, /^take an open hem with a gap of ([\d.]+) mm or more/);
    expect(found('hem-tight', tray({ type: 'open', length: 12, gap }), shop)).toBeUndefined();
  });

  test('bends along the rolling direction: a radius as large as said', () => {
    const tray = (radius: number) =>
      planned({ family: 'open-box', length: 200, width: 120, height: 50 }, sheet(1, radius, 'stainless-304'));
    const radius = number(found('grain', tray(1), shop)?.fix, /^bend to ([\d.]+) mm inside/);
    expect(found('grain', tray(radius), shop)).toBeUndefined();
  });
});

test('legs come out shorter where the brake makes the bend sharper than it was laid out', () => {
  // flat length at R 3, then the outside legs that a bend of R 1.5 makes of it
  const plan = strip(sheet(1, 3));
  const deduction = (R: number) => 2 * (R + 1) - (Math.PI / 2) * (R + 0.42);
  expect(plan.flat.blank.max[0]).toBeCloseTo(120 - deduction(3), 9);
  const legs = plan.flat.blank.max[0] + deduction(1.5);
  const finding = found('radius-made', plan, STRICT);
  expect(finding?.value).toBeCloseTo(120 - legs, 9);
  expect(finding?.message).toMatch(/makes 1\.5 mm: its legs come out 0\.64 mm shorter together/);
});

test('where a bend turns far past square a sharper one leaves more', () => {
  const far = planned({ family: 'bent-strip', width: 80, legs: [60, 60], angles: [135] }, sheet(1, 8));
  expect(found('radius-made', far, STRICT)?.message).toMatch(/longer together/);
});

describe('the radius a machine makes', () => {
  const bent = (angle: number, R: number) =>
    planned({ family: 'bent-strip', width: 80, legs: [60, 60], angles: [angle] }, sheet(1, R));
  const press: Shop = { ...STRICT, brake: null, press: EXAMPLE_PRESS };

  test.each([136, 150, 170])('%d degrees, past the leaf of 135: nothing is made of it', (angle) => {
    expect(found('radius-made', bent(angle, 8), STRICT)).toBeUndefined();
    expect(found('radius-made', bent(angle, 1), STRICT)).toBeUndefined();
  });

  test('92 degrees and 3 of overbend are what tools of 85 do', () => {
    expect(found('radius-made', bent(92, 8), press)).toBeDefined();
    expect(found('radius-made', bent(92.1, 8), press)).toBeUndefined();
  });

  test('one under the least of the metal is not advised', () => {
    // 2.5 T of set-back at 120 degrees: 2.5 / tan 60 - 1 = 0.44 mm; DIN 6935 has 1 mm for this steel of 1 mm
    const finding = found('radius-made', bent(120, 6), STRICT);
    expect(finding?.message).toContain('makes 0.44 mm');
    expect(finding?.fix).toBe('bend it over tools that make 6 mm; this metal needs 1 mm or more');
    expect(found('radius-made', bent(90, 6), STRICT)?.fix).toBe('lay it out with insideRadius 1.5 mm');
  });
});
