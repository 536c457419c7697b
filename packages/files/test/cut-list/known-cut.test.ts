import { planJob, readJob } from '@tinwright/core';
import { knownCut } from '@tinwright/files';
import { cutTotals } from '@tinwright/files/internal';
import { DEFAULT_SHOP } from '@tinwright/shop';
import { expect, test } from 'vitest';

const planOf = (stock: object) =>
  planJob(
    readJob({
      units: 'mm',
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
