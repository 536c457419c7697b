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
