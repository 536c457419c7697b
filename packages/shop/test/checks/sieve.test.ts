import { planJob, readJob } from '@tinwright/core';
import { DEFAULT_SHOP, planShop } from '@tinwright/shop';
import { expect, test } from 'vitest';

const PITCH = 10;
const COLUMNS = 32;
const ROWS = 25;

const sieve = (diameter: number) =>
  planJob(
    readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      parts: [
        {
          ...{ name: 'sieve', family: 'divider', length: PITCH * COLUMNS + 40, height: PITCH * ROWS + 40 },
          cutouts: [
            {
              ...{ panel: 'plate', type: 'round', diameter },
              columns: { count: COLUMNS, pitch: PITCH },
              rows: { count: ROWS, pitch: PITCH },
            },
          ],
        },
      ],
    } as unknown),
  );

const narrow = (diameter: number) => {
  const { findings } = planShop(sieve(diameter), DEFAULT_SHOP);
  return findings.find((f) => f.code === 'web-narrow');
};

test('800 holes too near each other: every pair of neighbours counts, and the diameter that is said passes', () => {
  const found = narrow(9);
  expect(found).toMatchObject({ value: expect.closeTo(1, 6), part: 'sieve' });
  expect(found?.where.others).toHaveLength(COLUMNS * (ROWS - 1) + (COLUMNS - 1) * ROWS - 1);
  const [change] = found?.changes ?? [];
  expect(change).toMatchObject({ path: ['cutouts', 0, 'diameter'], bound: 'most' });
  expect(narrow((change as { readonly found: number }).found)).toBeUndefined();
});
