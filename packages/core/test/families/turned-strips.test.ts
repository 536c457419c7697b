import { planJob, readJob } from '@tinwright/core';
import { describe, expect, test } from 'vitest';

const T = 1; // mm; inside radius the same, so that each square bend is 2 mm of setback on either leg
// BA = (π/180)·90·(1 + 0.42·1), FAA-H-8083-31 ch. 4 with this K; BD = 2·(1 + 1) − BA
const DEDUCTION = 4 - (Math.PI / 2) * 1.42;

function strip(legs: readonly number[], angles: readonly number[]) {
  const job = readJob({
    units: 'mm',
    stock: { material: 'galvanised-steel', thickness: T },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: T },
    parts: [{ name: 'bracket', family: 'bent-strip', width: 40, legs, angles }],
  });
  const [part] = planJob(job).parts;
  if (part === undefined) throw new Error('no part');
  return part;
}

// Sizes by hand: outside legs run from outside face to outside face. Where the next bend turns the other way the
// outside is the other face, so the leg behind it starts one thickness before the end of the one in front.
describe.each([
  ['a Z: 20 + 20 less the sheet, 30 high', [20, 30, 20], [90, -90], 20 + 20 - T, 30],
  ['a Z the other way up', [20, 30, 20], [-90, 90], 20 + 20 - T, 30],
  ['a hat: 20 + 40 + 20 less the sheet twice', [20, 30, 40, 30, 20], [90, -90, -90, 90], 80 - 2 * T, 30],
  [
    'a Z and a lip: 20 + 40 and 30 + 30, each less the sheet',
    [20, 30, 40, 30],
    [90, -90, 90],
    60 - T,
    60 - T,
  ],
  ['a channel on its first leg: 30 by 60', [30, 60, 30], [90, 90], 30, 60],
])('%s', (_, legs, angles, x, z) => {
  const { flat, formed } = strip(legs, angles);

  test('the formed size is the one asked', () => {
    expect(formed.size[0]).toBeCloseTo(x, 9);
    expect(formed.size[1]).toBeCloseTo(40, 9);
    expect(formed.size[2]).toBeCloseTo(z, 9);
  });

  test('the blank is the legs less a deduction for each bend, whichever way it turns', () => {
    const sum = legs.reduce((a, b) => a + b, 0);
    expect(flat.blank.max[0]).toBeCloseTo(sum - angles.length * DEDUCTION, 9);
    expect(flat.blank.max[1]).toBeCloseTo(40, 9);
  });

  test('bends up and down are told apart', () => {
    expect(flat.bends.map((b) => b.direction)).toEqual(angles.map((a) => (a > 0 ? 'up' : 'down')));
  });
});
