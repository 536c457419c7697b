import { planJob, readJob } from '@tinwright/core';
import { knownCut } from '@tinwright/files';
import { cutTotals } from '@tinwright/files/internal';
import { DEFAULT_SHOP } from '@tinwright/shop';
import { expect, test } from 'vitest';

const planOf = (stock: object, more: object = {}) =>
  planJob(
    readJob({
      units: 'mm',
      ...more,
      stock: { material: 'mild-steel', thickness: 1, ...stock },
      parts: [{ name: 'tray', family: 'open-box', length: 300, width: 200, height: 40, quantity: 4 }],
    } as unknown),
  );

test('a job that brings its sheets is cut from them: blanks, mass, price and what is lost', () => {
  const plan = planOf({ sheets: [{ size: [1000, 800], count: 2, price: 20 }] });
  const cut = knownCut({ plan, shop: null });
  expect(cut?.findings).toEqual([]);
  const all = cutTotals((cut as NonNullable<typeof cut>).work);
  expect(all).toMatchObject({ sheets: 1, blanks: 4, price: 20 });
  expect(all.mass).toBeCloseTo(4 * (plan.parts[0]?.mass ?? 0), 9);
});

test('three sets of it need the second sheet, a fourth is missing and told', () => {
  const plan = planOf({ sheets: [{ size: [1000, 800], count: 2 }] });
  const more = knownCut({ plan, shop: null, sets: 4 });
  expect(more?.findings.map((f) => f.code)).toEqual(['left-out']);
});

test('nothing is cut where nobody says what there is, or where a table does it', () => {
  expect(knownCut({ plan: planOf({}), shop: null })).toBeNull();
  expect(knownCut({ plan: planOf({}), shop: { ...DEFAULT_SHOP, shear: null } })).toBeNull();
});

test('a metal of the job is priced by its own weight, and its strength holds for the shear', () => {
  const zinc = { name: 'roof-zinc', like: 'copper', density: 7200, coating: 'none' };
  const stock = { material: 'roof-zinc', sheets: [{ size: [1000, 1000], price: { per: 'kg', amount: 3 } }] };
  const cut = knownCut({ plan: planOf(stock, { materials: [zinc] }), shop: null });
  // 1 m x 1 m x 1 mm of 7200 kg/m³ are 7.2 kg
  expect(cutTotals((cut as NonNullable<typeof cut>).work).price).toBeCloseTo(3 * 7.2, 9);
  const thick = planOf({ ...stock, thickness: 6 }, { materials: [zinc] });
  expect(knownCut({ plan: thick, shop: DEFAULT_SHOP })?.findings.map((f) => f.code)).toEqual(['left-out']);
});
