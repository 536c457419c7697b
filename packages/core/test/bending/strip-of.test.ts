import { stripOf } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const row = {
  name: 'coil',
  material: 'mild-steel',
  thickness: 1,
  insideRadius: 1.5,
  k: 0.4,
  kError: 0.02,
  strips: 5,
};

test.each([
  ['mild-steel', 1, 1.5, true],
  ['mild-steel', 1.004, 1.496, true],
  ['mild-steel', 1.04, 1.5, false],
  ['mild-steel', 1, 1.54, false],
  ['galvanised-steel', 1, 1.5, false],
])(
  '%s, %d mm, R %d: the row of 1 mm, R 1.5 holds for a hundredth of a millimetre: %s',
  (material, thickness, insideRadius, found) => {
    expect(stripOf([row], material, { thickness, insideRadius })).toBe(found ? row : undefined);
  },
);
