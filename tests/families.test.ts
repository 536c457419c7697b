import { FAMILIES } from '@tinwright/core';
import { expect, test } from 'vitest';
import { familyContract } from './kit/family-contract.js';

test('there are families to put through their duties', () => {
  expect(FAMILIES.length).toBeGreaterThan(4);
  expect(new Set(FAMILIES.map((f) => f.name)).size).toBe(FAMILIES.length);
});

for (const family of FAMILIES) familyContract(family);
