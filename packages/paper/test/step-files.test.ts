import { jobStepFiles } from '@tinwright/paper';
import { DEFAULT_SHOP, planShop } from '@tinwright/shop';
import { expect, test } from 'vitest';
import { planned } from '../../files/test/samples.js';

test.each([
  ['mm', [40, 60, 40], 80],
  ['in', [2, 3, 2], 4],
] as const)('step pictures of a job in %s tell every size in it', async (units, legs, width) => {
  const strip = planned([{ name: 'strip', family: 'bent-strip', width, legs, angles: [90, -90] }], {
    units,
    stock: { material: 'galvanised-steel', thickness: units === 'in' ? 0.04 : 1 },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: units === 'in' ? 0.04 : 1 },
  });
  const steps = jobStepFiles(strip, planShop(strip, DEFAULT_SHOP));
  expect(steps).toHaveLength(2);
  const said = steps.map((f) => f.content).join();
  expect([...new Set(said.match(/(?<=>[^<]*\d )(mm|in)\b/g))]).toEqual([units]);
});

test('step pictures in German where asked', () => {
  const strip = planned([{ name: 'strip', family: 'bent-strip', width: 80, legs: [40, 60], angles: [90] }]);
  const shop = planShop(strip, DEFAULT_SHOP);
  const [german] = jobStepFiles(strip, shop, { language: 'de' });
  expect(german?.content).toContain('lang="de"');
  expect(german?.content).toMatch(/Biegewange/);
});
