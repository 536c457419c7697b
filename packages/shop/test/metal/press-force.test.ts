import { expect, test } from 'vitest';
import { bendForce, FORCE_CONSTANTS } from '../../src/metal/press-force.js';

test('Groover, Fundamentals of Modern Manufacturing (from memory): 44.5 wide, T 3.2, TS 450, V 25: 10 909 N', () => {
  expect(bendForce(FORCE_CONSTANTS.usual.value, 450, 44.5, 3.2, 25)).toBeCloseTo(10.909, 3);
});
