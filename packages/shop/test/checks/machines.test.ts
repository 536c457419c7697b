// Rules that hold a part against a brake or a shear.

import { type Brake, DEFAULT_SHOP, type Shop } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { planned } from '../shops.js';
import { found, PRESS, STRICT, sheet, USUAL } from './kit.js';

const brake = DEFAULT_SHOP.brake as Brake;
const strip = (legs: readonly number[], angles: readonly number[], job: object = {}, width = 80) =>
  planned({ family: 'bent-strip', width, legs, angles }, job);

describe('thickness against capacity', () => {
  const of = (thickness: number, material = 'mild-steel', width = 600) =>
    strip([60, 60], [90], sheet(thickness, thickness, material), width);

  test.each([
    [1.2, undefined],
    [1.25, 'warning'],
    [1.5, 'warning'],
    [1.6, undefined], // the order of bends says so
  ])(
    'mild steel of %d mm on a brake for 1.5: two gauges less with box fingers are 1.21 mm',
    (t, severity) => {
      expect(found('sheet-thick', of(t), STRICT)?.severity).toBe(severity);
    },
  );

  test('mild steel of 1.5 mm in profile usual: the list as it stands', () => {
    expect(found('sheet-thick', of(1.5), USUAL)).toBeUndefined();
  });

  test('the limit in force, the manual and both profiles are named', () => {
    const finding = found('sheet-thick', of(1.4), STRICT);
    expect(finding?.limit).toBeCloseTo(0.0478 * 25.4, 6); // 18 gauge
    expect(finding?.source).toMatch(/−2 ga by a 4 ft brake's printed manual \(profile strict\)/);
    expect(finding?.fix).toBe('take sheet of 1.21 mm or thinner');
    expect(found('sheet-thick', of(1.21), STRICT)).toBeUndefined();
  });

  test('stainless without a row of its own: four gauges less than mild steel, then two for the fingers', () => {
    const shop = { ...STRICT, brake: { ...brake, capacity: [{ material: 'mild-steel', thickness: 1.5 }] } };
    const finding = found('sheet-thick', of(0.8, 'stainless-304'), shop);
    // 16 to 20 gauge, 0.0359 in; then to 22 gauge, 0.0299 in
    expect(finding?.limit).toBeCloseTo(0.0299 * 25.4, 6);
    expect(finding?.severity).toBe('warning');
    expect(finding?.source).toMatch(/−6 ga/);
  });

  test('where there is a press it is no finding', () => {
    expect(found('sheet-thick', of(1.4), { ...STRICT, press: PRESS })).toBeUndefined();
  });

  test('a shear that does not cut it counts where there is no table', () => {
    const flat = (table: Shop['table']) =>
      found(
        'sheet-thick',
        planned(
          { family: 'gusset-end', width: 200, shoulderHeight: 50, height: 100, crownWidth: 80 },
          sheet(2),
        ),
        { ...STRICT, table },
      );
    expect(flat(DEFAULT_SHOP.table)).toBeUndefined();
    expect(flat(null)).toMatchObject({ severity: 'error', value: 2, limit: 1.5 });
  });
});

test('a shop without machines finds nothing of theirs', () => {
  const bare: Shop = {
    ...STRICT,
    brake: null,
    press: null,
    vise: null,
    shear: null,
    table: null,
    sheets: [],
  };
  const plan = strip([13, 30, 40], [90, -90], sheet(3, 9));
  for (const code of ['sheet-thick', 'radius-made', 'cut-large', 'blank-large', 'tolerance'])
    expect(found(code, plan, bare), code).toBeUndefined();
});
