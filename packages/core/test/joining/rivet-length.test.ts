import { rivetLength } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

// ISO 15981, lengths 6 to 12 read in a copy, columns inferred; length 5 from memory
test.each([
  [3.2, 0.5, 5],
  [3.2, 1.5, 5],
  [3.2, 1.6, 6],
  [3.2, 3.5, 6],
  [3.2, 3.6, 8],
  [3.2, 5, 8],
  [3.2, 7, 10],
  [2.4, 3, 6],
  [4, 0.9, null],
  [4, 1, 6],
  [4, 6.5, 10],
  [4.8, 1.4, null],
  [4.8, 2.6, 8],
  [3, 3.4, 6],
  [5, 4.1, 10],
  [2.4, 40, null],
  [9, 2, null],
])('ISO 15981: a rivet of %d mm through %d mm of sheets is %s mm long', (diameter, stack, length) => {
  expect(rivetLength(diameter, stack)).toBe(length);
});
