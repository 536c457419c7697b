// Rules without a single limit, and how findings are put into words.
import { planJob, readJob } from '@tinwright/core';
import { DEFAULT_SHOP, type Shop } from '@tinwright/shop';
import { jobFindings, joiningFindings, withChanges } from '@tinwright/shop/internal';
import { tellFindings } from '@tinwright/words';
import { describe, expect, test } from 'vitest';
import { planned } from '../shops.js';
import { findingsOf, found, LASER_TABLE, PRESS_SHOP, STRICT, sheet, testPart, USUAL } from './kit.js';

const box = (more: object = {}, job: object = {}) =>
  planned({ family: 'open-box', length: 200, width: 120, height: 50, ...more }, job);

describe('relief', () => {
  test('strict: corners that end at the tangent lines, FAA-H-8083-31 wants 1/32 in past them', () => {
    const finding = found('relief-shallow', box(), STRICT);
    expect(finding).toMatchObject({ severity: 'note', value: 0, limit: 25.4 / 32 });
    expect(finding?.message).toMatch(/^the cut at 4 corners of base ends at the tangent lines/);
    expect(finding?.source).toMatch(/FAA-H-8083-31 .*\(profile strict\); T \+ R by design guides/);
    expect(finding?.fix).toBe('set relief: hole, or drill a hole of 3.18 mm there before cutting');
  });

  test.each(['hole', 'slot'])('relief: %s passes', (relief) => {
    expect(found('relief-shallow', box({ relief }), STRICT)).toBeUndefined();
  });

  test('usual: a notch that ends at the tangent lines passes', () => {
    expect(found('relief-shallow', box(), USUAL)).toBeUndefined();
  });

  test('a part without corners between bends has none', () => {
    const strip = planned({ family: 'bent-strip', width: 80, legs: [40, 40], angles: [90] });
    expect(found('relief-shallow', strip, STRICT)).toBeUndefined();
  });
});

describe('rolling direction', () => {
  const strip = (job: object, legs = [60, 100]) =>
    planned({ family: 'bent-strip', width: 80, legs, angles: [90] }, job);

  test('bends one way: said how the blank has to lie', () => {
    // 5052-H32 of 1.2 mm takes 1.2 mm across; 1.5 times that is near
    const finding = found('grain', strip(sheet(1.2, 1.6, 'aluminium-5052-h32')), STRICT);
    expect(finding).toMatchObject({ severity: 'note', value: 1.6 });
    expect(finding?.limit).toBeCloseTo(1.8, 9);
    expect(finding?.fix).toBe('lay the blank with its x along the long side of the sheet');
    expect(finding?.source).toMatch(/Aluminum Design Manual .*; 1\.5 R, judgement/);
  });

  test('at its limit: 1.8 mm passes, 1.79 mm does not', () => {
    expect(found('grain', strip(sheet(1.2, 1.8, 'aluminium-5052-h32')), STRICT)).toBeUndefined();
    expect(found('grain', strip(sheet(1.2, 1.79, 'aluminium-5052-h32')), STRICT)).toBeDefined();
  });

  test('a blank that fits the sheet one way only, with its bends along it', () => {
    const shop: Shop = { ...STRICT, sheets: [[1000, 120]] };
    // 80 wide and longer than 120: its x has to lie along the sheet, its bends across
    expect(found('grain', strip(sheet(1.2, 1.6, 'aluminium-5052-h32')), shop)?.fix).toMatch(
      /^lay the blank with its x/,
    );
    const wide = planned(
      { family: 'bent-strip', width: 600, legs: [40, 40], angles: [90] },
      sheet(1.2, 1.6, 'aluminium-5052-h32'),
    );
    const finding = found('grain', wide, shop);
    expect(finding?.message).toMatch(
      /^leg-2, with an inside radius of 1\.6 mm, runs along the rolling direction/,
    );
    expect(finding?.fix).toBe('bend to 1.8 mm inside, or try one along the rolling direction on an offcut');
  });

  test('bends both ways: some run along it whichever way the blank lies', () => {
    const finding = found('grain', box({}, sheet(1, 1, 'stainless-304')), STRICT);
    expect(finding?.message).toMatch(/whichever way the blank is laid/);
    expect(finding?.source).toMatch(/^a design guide; 1\.5 R, judgement/);
  });

  test('low-carbon steel at the radius of DIN 6935 and hemmed flat: nothing to say', () => {
    expect(found('grain', box({ hem: { type: 'closed', length: 10 } }), STRICT)).toBeUndefined();
    expect(found('grain', box({}, sheet(1, 0.5)), STRICT)).toBeDefined();
  });
});

describe('what sizes come out at', () => {
  test('hand brake and plasma: ISO 2768-1 class c and ISO 9013 class 2', () => {
    const finding = found('tolerance', box(), DEFAULT_SHOP);
    // largest bent size 200 mm, cut length 296 mm, 1 mm thick
    expect(finding).toMatchObject({ severity: 'note', value: 1.2, unit: 'mm' });
    expect(finding?.message).toMatch(
      /^expect ±1\.2 mm on the bent size of 200 mm and ±2° on its angles, ±0\.7 mm on the cut length of 296/,
    );
    expect(finding?.source).toMatch(/ISO 2768-1 class c, from memory; ISO 9013 class 2/);
  });

  test('press brake and laser: classes m and 1', () => {
    const finding = found('tolerance', box(), { ...PRESS_SHOP, table: LASER_TABLE });
    expect(finding?.message).toMatch(
      /^expect ±0\.5 mm on the bent size of 200 mm and ±1° on its angles, ±0\.2 mm on the cut/,
    );
  });

  test('a flat part has only its cut', () => {
    const flat = planned({
      family: 'gusset-end',
      width: 200,
      shoulderHeight: 50,
      height: 100,
      crownWidth: 80,
    });
    expect(found('tolerance', flat, DEFAULT_SHOP)?.message).toBe(
      'expect ±0.7 mm on the cut length of 200 mm',
    );
    expect(found('tolerance', flat, { ...DEFAULT_SHOP, table: null })).toBeUndefined();
  });
});

describe('a job in inches', () => {
  const tray = box({ hem: { type: 'closed', length: 5 } });

  test('lengths are said in inches, numbers stay mm', () => {
    const finding = found('hem-short', tray, STRICT, 'in');
    expect(finding).toMatchObject({ value: 5, limit: 6, unit: 'mm' });
    expect(finding?.message).toBe(
      'hem-north is 0.197 in wide over its fold, 0.237 in at least; also hem-south, hem-east, hem-west',
    );
    expect(finding?.fix).toBe('make hem.length 0.237 in or more');
  });

  test.each(['mm', 'in'] as const)('no finding in %s speaks another unit of its sizes', (unit) => {
    const other =
      unit === 'mm' ? / in\b(?! (the|a|one|its|profile|hard|sheet|fingers|handling|front))/ : /\d mm\b/;
    for (const f of findingsOf(tray, STRICT, unit)) expect(f.message, f.code).not.toMatch(other);
  });
});

describe('one finding a rule', () => {
  test('worst place first, others by name', () => {
    const strip = planned(
      { family: 'bent-strip', width: 80, legs: [11, 11.5, 60], angles: [45, 45] },
      sheet(1, 3),
    );
    const finding = found('leg-short', strip, STRICT);
    expect(finding?.message).toMatch(/^leg-1 is 11 mm long outside, .*; also leg-2$/);
    expect(findingsOf(strip, STRICT).filter((f) => f.code === 'leg-short')).toHaveLength(1);
  });

  test('many others are counted', () => {
    const body = planned(
      { family: 'hemmed-channel', length: 300, width: 120, height: 60, endTabs: { length: 13 } },
      sheet(1, 3.5),
    );
    expect(found('leg-short', body, STRICT)?.message).toMatch(/; at \d+ more places$/);
  });

  test('two holes in one panel: said as more of the same', () => {
    const plan = testPart({ family: 'holed-plate', from: 30, hole: 0.9, second: 10 });
    expect(found('hole-small', plan, STRICT)?.message).toMatch(/; 1 more there$/);
  });

  test('errors before warnings before notes', () => {
    const weights = findingsOf(box({ height: 5, length: 2100 }, sheet(1.4)), { ...STRICT, vise: null }).map(
      (f) => ['error', 'warning', 'note'].indexOf(f.severity),
    );
    expect(weights).toContain(0);
    expect(weights).toContain(2);
    expect(weights).toEqual(weights.toSorted((a, b) => a - b));
  });
});

describe('joints', () => {
  const data = (by: unknown, thickness = 1, length = 300) => ({
    units: 'mm',
    stock: { material: 'mild-steel', thickness },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: thickness },
    parts: [
      { name: 'body', family: 'hemmed-channel', length, width: 160, height: 60, endTabs: { length: 22 } },
      {
        name: 'end',
        family: 'gusset-end',
        quantity: 2,
        width: { of: 'body.seatWidth', less: 0.4 },
        shoulderHeight: 58,
        height: 150,
        crownWidth: 60,
      },
    ],
    joints: [
      { name: 'west', from: 'body.west', to: 'end-1.rim', by },
      { name: 'east', from: 'body.east', to: 'end-2.rim', by },
    ],
  });
  const plan = (by: unknown, thickness?: number) => planJob(readJob(data(by, thickness) as unknown));
  const of = (by: unknown, shop: Shop, thickness?: number) => {
    const job = plan(by, thickness);
    return tellFindings(withChanges(jobFindings(job, shop), job, shop), 'mm', 'en');
  };

  test('a shop that has what they need: nothing to say', () => {
    expect(joiningFindings(plan('spot-weld'), DEFAULT_SHOP)).toEqual([]);
    expect(joiningFindings(plan({ 'blind-rivet': { diameter: 3.2 } }), DEFAULT_SHOP)).toEqual([]);
  });

  test('no welder, no rivet gun', () => {
    expect(of('spot-weld', { ...DEFAULT_SHOP, spotWelder: null })).toContainEqual(
      expect.objectContaining({
        code: 'welder-missing',
        part: 'body',
        message: 'joints west, east: spot welds, and the shop has no spot welder',
      }),
    );
    expect(of('blind-rivet', { ...DEFAULT_SHOP, riveter: null })).toContainEqual(
      expect.objectContaining({ code: 'riveter-missing' }),
    );
  });

  test.each([
    [0.5, false],
    [0.45, true],
    [1.5, false],
    [1.55, true],
  ])('sheet of %d mm in a welder for 0.5 to 1.5: %s', (t, fails) => {
    const finding = of('spot-weld', DEFAULT_SHOP, t).find((f) => f.code === 'welder-sheet');
    expect(finding !== undefined).toBe(fails);
    if (fails) expect(finding).toMatchObject({ value: t, limit: t < 1 ? 0.5 : 1.5 });
  });

  test('throat: as deep as the weld furthest in asks for', () => {
    const welder = DEFAULT_SHOP.spotWelder as NonNullable<Shop['spotWelder']>;
    const with_ = (throat: number): Shop => ({ ...DEFAULT_SHOP, spotWelder: { ...welder, throat } });
    const finding = of('spot-weld', with_(1)).find((f) => f.code === 'welder-throat');
    expect(finding?.at).toHaveLength(2);
    const reach = finding?.value as number;
    expect(reach).toBeGreaterThan(10);
    expect(of('spot-weld', with_(reach)).some((f) => f.code === 'welder-throat')).toBe(false);
    expect(of('spot-weld', with_(reach - 0.01)).some((f) => f.code === 'welder-throat')).toBe(true);
  });

  test('a throat is said no deeper than it is', () => {
    const welder = DEFAULT_SHOP.spotWelder as NonNullable<Shop['spotWelder']>;
    const shop: Shop = { ...DEFAULT_SHOP, spotWelder: { ...welder, throat: 1.006 } };
    const [finding] = of('spot-weld', shop).filter((f) => f.code === 'welder-throat');
    expect(finding?.message).toMatch(/the throat of the .* is 1 mm$/);
  });

  test('a throat the joint gives is held by the core alone', () => {
    const welder = DEFAULT_SHOP.spotWelder as NonNullable<Shop['spotWelder']>;
    const all = of({ 'spot-weld': { throat: 5 } }, { ...DEFAULT_SHOP, spotWelder: { ...welder, throat: 1 } });
    expect(all.some((f) => f.code === 'welder-throat')).toBe(false);
    expect(all.some((f) => f.code === 'weld-throat')).toBe(true);
  });

  test('a rivet the gun has no nosepiece for: the nearest is named', () => {
    const finding = of({ 'blind-rivet': { diameter: 6.4 } }, DEFAULT_SHOP).find(
      (f) => f.code === 'riveter-size',
    );
    expect(finding).toMatchObject({ value: 6.4, limit: 4.8, fix: 'take rivets of 4.8 mm' });
    expect(finding?.message).toMatch(/the rivet gun sets 2\.4 mm, 3\.2 mm, 4 mm, 4\.8 mm$/);
  });

  test('electrode: half of it and 1 mm beside a bend', () => {
    const welder = DEFAULT_SHOP.spotWelder as NonNullable<Shop['spotWelder']>;
    const at = (electrode: number) =>
      of('spot-weld', { ...DEFAULT_SHOP, spotWelder: { ...welder, electrode } }).find(
        (f) => f.code === 'weld-electrode',
      );
    const beside = at(50)?.value as number;
    expect(at(2 * (beside - 1))).toBeUndefined();
    const finding = at(2 * (beside - 1) + 0.02);
    expect(finding?.limit).toBeCloseTo(beside + 0.01, 6);
    const [, fits] = /electrodes of ([\d.]+) mm/.exec(finding?.fix ?? '') ?? [];
    expect(at(Number(fits))).toBeUndefined();
  });
});

test('a kerf is said no narrower than it is', () => {
  const part = testPart({ family: 'cut-plate', notch: 0.2, deep: 3, prong: 30, long: 20 });
  const shop: Shop = { ...STRICT, table: { ...(LASER_TABLE as NonNullable<Shop['table']>), kerf: 0.214 } };
  expect(found('gap-under-kerf', part, shop)?.message).toMatch(/is 0\.22 mm/);
});
