import { FAMILIES } from '@tinwright/core';
import { familyContract } from '@tinwright/testing';
import fc from 'fast-check';
import { expect, test } from 'vitest';

test('there are families to put through their duties', () => {
  expect(FAMILIES.length).toBeGreaterThan(4);
  expect(new Set(FAMILIES.map((f) => f.name)).size).toBe(FAMILIES.length);
});

const { seed = 1 } = fc.readConfigureGlobal();
const runs = Number(process.env.TINWRIGHT_RUNS ?? 20);
for (const family of FAMILIES) familyContract(family, test, { seed, runs });
