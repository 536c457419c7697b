import { JobError } from '@tinwright/core';
import { DEFAULT_SHOP, jobContext, readShop } from '@tinwright/shop';
import { expect, test } from 'vitest';

test('a shop that cuts by table brings its kerf to jobs; one that says nothing leaves it to them', () => {
  const table = { name: 'table', process: 'plasma', length: 1000, width: 1000, kerf: 1.4, smallestHole: 5 };
  expect(jobContext(readShop({ units: 'mm', cutBy: 'table', table })).usualCut).toEqual({
    by: 'table',
    kerf: 1.4,
  });
  expect(jobContext(DEFAULT_SHOP).usualCut).toEqual({ by: null, kerf: 1.3 });
});

test('cutBy: table in a shop without a table is refused', () => {
  expect(() => readShop({ units: 'mm', cutBy: 'table' })).toThrow(JobError);
});
