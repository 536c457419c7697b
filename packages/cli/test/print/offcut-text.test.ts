import { NO_LIMITS, planShear, readRack, SHEAR_EFFORT } from '@tinwright/cutting';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { cutRackText } from '../../src/print/offcut-text.js';

const RACK = `units: in
sheets:
  - { name: full, material: mild-steel, thickness: 0.0359, size: [96, 48] } # no count: more can be had
`;

test('inches stay inches, a sheet without a count stays one, a name that is taken gets a number', () => {
  const rack = readRack(parse(RACK));
  const blank = {
    part: 'lid',
    material: 'mild-steel',
    thickness: 0.0359 * 25.4,
    x: 500,
    y: 400,
    quantity: 1,
    grain: null,
  };
  const plans = planShear([blank], rack, NO_LIMITS, {
    ...SHEAR_EFFORT,
    steps: { sheets: 0, offcut: 0, neat: 0 },
  });
  const once = cutRackText(RACK, plans, 'bins');
  const twice = cutRackText(once, plans, 'bins');
  const { sheets, offcuts } = parse(twice);
  expect(sheets).toEqual(parse(RACK).sheets);
  expect(offcuts.map((o: { name: string }) => o.name)).toContain('bins offcut 1.1 (2)');
  expect(offcuts[0].size[0]).toBeLessThanOrEqual(96);
  expect(twice).toContain('# no count');
});

/** The rack after a lid of its first metal was cut from it, and what a reader finds in it. */
function lidFrom(text: string) {
  const rack = readRack(parse(text));
  const { material, thickness } = rack.sheets[0] as (typeof rack.sheets)[number];
  const lid = { part: 'lid', material, thickness, x: 300, y: 200, quantity: 1, grain: null };
  const plans = planShear([lid], rack, NO_LIMITS, {
    ...SHEAR_EFFORT,
    steps: { sheets: 0, offcut: 0, neat: 0 },
  });
  const cut = cutRackText(text, plans, 'lids');
  return { cut, before: rack.sheets, after: readRack(parse(cut)).sheets };
}

test.each([
  ['in', 'thickness: 1 mm', '[24, 20]'],
  ['in', 'gauge: 20', '[24, 20]'],
  ['mm', 'gauge: 20', '[600, 500]'],
  ['mm', 'thickness: 1/16 in', '[600, 500]'],
])('an offcut is exactly of the metal it comes from: %s, %s', (units, metal, size) => {
  const { before, after } = lidFrom(
    `units: ${units}\nsheets:\n  - { name: a, material: mild-steel, ${metal}, size: ${size}, count: 1, grain: y }\n`,
  );
  const [offcut] = after;
  expect(offcut).toMatchObject({ origin: 'offcut', material: 'mild-steel', grain: 'y' });
  expect(offcut?.thickness).toBe(before[0]?.thickness);
});

test('values that stand in the file once and count twice: each row is told apart', () => {
  const { cut, after } = lidFrom(
    `units: mm
note: &n big
sheets:
  - { name: *n, material: &m mild-steel, thickness: &t 1, size: [600, 500], count: &c 3 } # big ones
  - { name: small, material: *m, thickness: *t, size: [100, 50], count: *c }
`,
  );
  expect(after.map((s) => [s.name, s.count])).toContainEqual(['big', 2]);
  expect(after.map((s) => [s.name, s.count])).toContainEqual(['small', 3]);
  expect(cut).toContain('# big ones');
});
