import { FAMILIES } from '@tinwright/core';
import { familyContract } from '@tinwright/testing';
import fc from 'fast-check';
import { expect, test } from 'vitest';

test('there are families to put through their duties', () => {
  expect(FAMILIES.length).toBeGreaterThan(4);
  expect(new Set(FAMILIES.map((f) => f.name)).size).toBe(FAMILIES.length);
});

const { seed = 1, numRuns: runs = 20 } = fc.readConfigureGlobal();
for (const family of FAMILIES) familyContract(family, test, { seed, runs });
