import type { Grain } from '@tinwright/cutting';
import { sameMetal, turnsAllowed } from '@tinwright/cutting/internal';
import { expect, test } from 'vitest';

test.each<[blank: Grain, sheet: Grain, ways: readonly string[]]>([
  [null, 'x', ['drawn', 'turned']],
  ['x', null, ['drawn', 'turned']],
  ['x', 'x', ['drawn']],
  ['y', 'y', ['drawn']],
  ['x', 'y', ['turned']],
  ['y', 'x', ['turned']],
])('a blank with grain %s on a sheet with grain %s lies %j', (blank, sheet, ways) => {
  expect(turnsAllowed({ grain: blank }, { grain: sheet })).toEqual(ways);
});

test('the same alloy in another thickness is not the same metal', () => {
  const sheet = { material: 'mild-steel', thickness: 1 };
  expect(sameMetal(sheet, { material: 'mild-steel', thickness: 1 })).toBe(true);
  expect(sameMetal(sheet, { material: 'mild-steel', thickness: 1.2 })).toBe(false);
  expect(sameMetal(sheet, { material: 'galvanised-steel', thickness: 1 })).toBe(false);
});
