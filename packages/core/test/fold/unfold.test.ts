import { expect, test } from 'vitest';
import { kFactor } from '../../src/bending/k-factor.js';
import { fold } from '../../src/fold/build.js';
import { rectangle } from '../../src/fold/outline.js';
import { unfold } from '../../src/fold/unfold.js';
import { flange, panel } from '../../src/fold/verbs.js';

const sheet = { thickness: 1, insideRadius: 1, rule: kFactor(0.42) };

test('an angle of 30 and 40 mm legs: flat length is the legs less one deduction', () => {
  const part = fold(
    sheet,
    panel('base', rectangle(30, 20)),
    flange('wall', ['base', 'east'], { height: 40 }),
  );
  const flat = unfold(part);
  expect(flat.blank.max[0]).toBeCloseTo(30 + 40 - (4 - (Math.PI / 2) * 1.42), 12);
  expect(flat.blank.max[1]).toBeCloseTo(20, 12);
});
