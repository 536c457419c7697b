import { degrees, radians } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

test('half a turn: 180 degrees is π', () => {
  expect(radians(180)).toBe(Math.PI);
  expect(degrees(Math.PI)).toBe(180);
});

test('one degree: 0.0174533 rad, as printed in any table of constants', () => {
  expect(radians(1)).toBeCloseTo(0.0174533, 7);
});

test('a negative angle: the sign is kept both ways', () => {
  expect(radians(-90)).toBeCloseTo(-1.5707963, 7);
  expect(degrees(-Math.PI / 6)).toBeCloseTo(-30, 12);
});
