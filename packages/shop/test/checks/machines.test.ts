// Rules that hold a part against a brake, a press or a shear: thickness, force, steps, channels, boxes.
import { describe, expect, test } from 'vitest';
import { type Brake, DEFAULT_SHOP, type Die, type Press, type Punch, type Shop } from '../../src/index.js';
import { planned, shopWith } from '../shops.js';
import { found, PRESS, PRESS_SHOP, STRICT, sheet, testPart, USUAL } from './kit.js';

const brake = DEFAULT_SHOP.brake as Brake;
const strip = (legs: readonly number[], angles: readonly number[], job: object = {}, width = 80) =>
  planned({ family: 'bent-strip', width, legs, angles }, job);
const handless = (shop: Shop): Shop => ({ ...shop, vise: null });

describe('thickness against capacity', () => {
  const of = (thickness: number, material = 'mild-steel', width = 600) =>
    strip([60, 60], [90], sheet(thickness, thickness, material), width);

  test.each([
    [1.2, undefined],
    [1.25, 'warning'],
    [1.5, 'warning'],
    [1.6, 'error'],
  ])(
    'mild steel of %d mm on a brake for 1.5: two gauges less with box fingers are 1.21 mm',
    (t, severity) => {
      expect(found('sheet-thick', of(t), STRICT)?.severity).toBe(severity);
    },
  );

  test.each([
    [1.5, undefined],
    [1.6, 'error'],
  ])('mild steel of %d mm in profile usual: the list as it stands', (t, severity) => {
    expect(found('sheet-thick', of(t), USUAL)?.severity).toBe(severity);
  });

  test('the limit in force, the manual and both profiles are named', () => {
    const finding = found('sheet-thick', of(1.4), STRICT);
    expect(finding?.limit).toBeCloseTo(0.0478 * 25.4, 6); // 18 gauge
    expect(finding?.source).toMatch(/2 gauges less with box fingers by a 4 ft brake's printed manual/);
    expect(finding?.source).toMatch(/profile strict; take profile usual/);
    expect(finding?.fix).toBe('take sheet of 1.21 mm or thinner');
    expect(found('sheet-thick', of(1.21), STRICT)).toBeUndefined();
  });

  test('stainless without a row of its own: four gauges less than mild steel, then two for the fingers', () => {
    const shop = { ...STRICT, brake: { ...brake, capacity: [{ material: 'mild-steel', thickness: 1.5 }] } };
    const finding = found('sheet-thick', of(0.8, 'stainless-304'), shop);
    // 16 to 20 gauge, 0.0359 in; then to 22 gauge, 0.0299 in
    expect(finding?.limit).toBeCloseTo(0.0299 * 25.4, 6);
    expect(finding?.severity).toBe('warning');
    expect(finding?.source).toMatch(/4 less on stainless/);
  });

  test('a metal without a row: carried over by equal bending moment', () => {
    // nearest in strength to brass (440) is mild steel (410): 1.5 · √(410 / 440)
    const finding = found('sheet-thick', of(1.5, 'brass'), handless(USUAL));
    expect(finding?.limit).toBeCloseTo(1.5 * Math.sqrt(410 / 440), 6);
    expect(finding?.severity).toBe('error');
  });

  test('a part that the vise takes whole is only told', () => {
    const small = strip([40, 40], [90], sheet(1.5, 1.5), 80);
    expect(found('sheet-thick', small, STRICT)?.severity).toBe('note');
    expect(found('sheet-thick', small, handless(STRICT))?.severity).toBe('warning');
  });

  test('a press that has the force makes it no finding', () => {
    expect(found('sheet-thick', of(2), { ...STRICT, press: PRESS })).toBeUndefined();
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

describe('force of a press', () => {
  // C · Rm · L · T² / V with the greatest strength of DC01, 410 N/mm², V 16 or 12 for R 2
  const force = (c: number, length: number) => (c * 410 * length * 4) / 16 / 1000;
  const of = (width: number) => strip([60, 60], [90], sheet(2, 2.4), width);

  test.each([
    ['strict', 1.48],
    ['usual', 1.33],
  ] as const)('profile %s: C = %d', (profile, c) => {
    const at = (kN: number): Shop => ({
      ...PRESS_SHOP,
      profile,
      press: { ...(PRESS as NonNullable<Shop['press']>), force: kN },
    });
    expect(found('bend-force', of(500), at(force(c, 500) + 0.01))).toBeUndefined();
    const finding = found('bend-force', of(500), at(force(c, 500) - 0.01));
    expect(finding).toMatchObject({ severity: 'error', unit: '' });
    expect(finding?.value).toBeCloseTo(force(c, 500), 6);
    expect(finding?.source).toContain(`C = ${c} by`);
    expect(finding?.source).toMatch(/1\.48 by .*1\.33 by|1\.33 by .*1\.48 by/);
  });

  test('the V that would do is said, and does', () => {
    const shop: Shop = { ...PRESS_SHOP, press: { ...(PRESS as NonNullable<Shop['press']>), force: 70 } };
    const finding = found('bend-force', of(500), shop);
    const [, opening] = /take a V of ([\d.]+) mm or more/.exec(finding?.fix ?? '') ?? [];
    const press = shop.press as NonNullable<Shop['press']>;
    const [die] = press.dies;
    const wider = {
      ...shop,
      press: { ...press, dies: [{ ...(die as NonNullable<typeof die>), opening: Number(opening) }] },
    };
    expect(found('bend-force', of(500), wider)).toBeUndefined();
  });

  test('where a leaf brake makes the bend the press need not', () => {
    const weak = { ...(PRESS as NonNullable<Shop['press']>), force: 1 };
    const thin = strip([60, 60], [90], sheet(1), 500);
    expect(found('bend-force', thin, { ...STRICT, press: weak })).toBeUndefined();
    expect(found('bend-force', thin, { ...PRESS_SHOP, press: weak })).toBeDefined();
  });
});

describe('steps', () => {
  const step = (web: number) => strip([40, web, 40], [90, -90]);

  test('on a leaf brake: clear of the leaf by margin and thickness, or of the bed', () => {
    const plan = step(60);
    const margin = 0.5 + 0.002 * plan.flat.blank.max[0];
    const room = 60 - margin - 1;
    const shop = (leaf: number, bed: number) =>
      handless({ ...STRICT, brake: { ...brake, leaf: { width: leaf, stop: 135 }, bed } });
    expect(found('step-narrow', plan, shop(room, 500))).toBeUndefined();
    expect(found('step-narrow', plan, shop(500, room))).toBeUndefined();
    const finding = found('step-narrow', plan, shop(room + 0.01, 500));
    expect(finding).toMatchObject({ severity: 'error', value: 60 });
    expect(finding?.limit).toBeCloseTo(60.01, 6);
  });

  test('one that goes in the vise is only told', () => {
    expect(found('step-narrow', step(30), STRICT)).toMatchObject({ severity: 'note' });
    expect(found('step-narrow', step(30), handless(STRICT))).toMatchObject({ severity: 'error' });
  });

  test('on a press: half the die, T and 0.5 mm; V/2 + 2.5 + 2T where that is more', () => {
    // V 6: block 18 wide
    expect(found('step-narrow', step(10.5), PRESS_SHOP)).toBeUndefined();
    expect(found('step-narrow', step(10.49), PRESS_SHOP)).toMatchObject({ severity: 'error', limit: 10.5 });
    const narrow: Shop = {
      ...PRESS_SHOP,
      press: {
        ...(PRESS as NonNullable<Shop['press']>),
        dies: [
          {
            name: 'V 6',
            opening: 6,
            angle: 85,
            sectioned: true,
            section: [
              [-4, 0],
              [4, 0],
              [4, -60],
              [-4, -60],
            ],
          },
        ],
      },
    };
    expect(found('step-narrow', step(7.49), narrow)).toMatchObject({ severity: 'warning', limit: 7.5 });
    expect(found('step-narrow', step(7.5), narrow)).toBeUndefined();
    expect(found('step-narrow', step(7.49), { ...narrow, profile: 'usual' })).toBeUndefined();
    expect(found('step-narrow', step(5.49), { ...narrow, profile: 'usual' })).toMatchObject({
      severity: 'error',
      limit: 5.5,
    });
  });

  test('an offset that wants a die of its own is not told twice', () => {
    const small = strip([40, 3, 40], [45, -45]);
    expect(found('offset-small', small, handless(STRICT))).toBeDefined();
    expect(found('step-narrow', small, handless(STRICT))).toBeUndefined();
  });

  test('bends that turn the same way are no step', () => {
    expect(found('step-narrow', strip([40, 30, 40], [90, 90]), handless(STRICT))).toBeUndefined();
  });
});

describe('channels: foot 60, upright 35, nose 45°', () => {
  const channel = (flange: number, web: number) => strip([flange, web, flange], [90, 90]);

  test.each([
    [80, 50, true],
    [30, 50, false],
    [70, 70, false],
  ])('flanges of %d on a web of %d: impossible %s', (flange, web, impossible) => {
    expect(found('channel-deep', channel(flange, web), shopWith()) !== undefined).toBe(impossible);
  });

  test('the number that fails by less is the one told', () => {
    // web under the fingers is 13.3 mm short, flange for the leaf 44.7 mm too high
    const narrow = found('channel-deep', channel(80, 50), shopWith());
    expect(narrow).toMatchObject({ severity: 'warning', value: 50 });
    expect(narrow?.message).toMatch(/wide between flanges that turn the same way/);
    const low = found('channel-deep', channel(38, 40), shopWith());
    expect(low?.message).toMatch(/high, .* at most to clear the fingers/);
  });

  test('one flange that is low enough is bent first', () => {
    expect(found('channel-deep', strip([80, 50, 20], [90, 90]), shopWith())).toBeUndefined();
  });

  test('walls higher than the beam is clear of', () => {
    const plan = channel(90, 150);
    const margin = 0.5 + 0.002 * plan.flat.blank.max[0];
    expect(found('channel-deep', plan, shopWith({ clearHeight: 89 + margin }))).toBeUndefined();
    const finding = found('channel-deep', plan, shopWith({ clearHeight: 89 + margin - 0.01 }));
    expect(finding?.message).toMatch(/at most to stand under the beam/);
    expect(finding?.limit).toBeCloseTo(89.99, 6);
  });

  test.each([
    [10, false],
    [11, true],
  ])('a tab of %d mm opposite a wall, where 10 mm may stay bare: impossible %s', (facing, impossible) => {
    const plan = testPart({ family: 'uneven-channel', facing });
    expect(found('channel-deep', plan, shopWith()) !== undefined).toBe(impossible);
  });

  test('a press brake is left to the order of bends', () => {
    expect(found('channel-deep', channel(80, 50), { ...shopWith(), press: PRESS })).toBeUndefined();
  });
});

describe('boxes', () => {
  const box = (height: number, more: object = {}) =>
    planned({ family: 'open-box', length: 200, width: 120, height, ...more });
  const margin = (plan: ReturnType<typeof box>) => 0.5 + 0.002 * Math.max(...plan.flat.blank.max);

  test('walls up to the clear height less the margin', () => {
    const plan = box(60);
    expect(found('box-deep', plan, shopWith({ clearHeight: 59 + margin(plan) }))).toBeUndefined();
    const finding = found('box-deep', plan, shopWith({ clearHeight: 58.99 + margin(plan) }));
    expect(finding).toMatchObject({ severity: 'warning', value: 60 });
    expect(finding?.limit).toBeCloseTo(59.99, 6);
    expect(finding?.fix).toMatch(/^make height 59\.\d+ mm or less/);
  });

  test('a base that ends in front of the beam lets walls be any height', () => {
    expect(found('box-deep', box(76, { width: 40 }), shopWith({ beam: 35 }))).toBeDefined();
    expect(found('box-deep', box(76, { width: 40 }), shopWith({ beam: 60 }))).toBeUndefined();
  });

  test('what holds of the whole box is not told of its pairs of walls again', () => {
    expect(found('box-deep', box(120), shopWith())).toBeDefined();
    expect(found('channel-deep', box(120), shopWith())).toBeUndefined();
  });

  test('two walls are no box', () => {
    const channel = planned({ family: 'hemmed-channel', length: 200, width: 120, height: 90 });
    expect(found('box-deep', channel, shopWith())).toBeUndefined();
    expect(found('channel-deep', channel, shopWith())).toBeDefined();
  });

  test('on a press: (height of the ram − half its width) / √2 over the inside of the base', () => {
    const most = (100 - 15) / Math.SQRT2 + 1;
    expect(found('box-deep', box(most - 0.01), PRESS_SHOP)).toBeUndefined();
    const finding = found('box-deep', box(most + 0.01), PRESS_SHOP);
    expect(finding?.limit).toBeCloseTo(60.1 + 1, 1);
    expect(finding?.source).toMatch(/\(height of the ram − half its width\) \/ √2/);
  });

  test('on a press a short base takes its walls past the ram', () => {
    // inside 40 − 4 by the radii: the far corner comes to (36 + h) / √2 under a ram of 100
    const square = (height: number) => box(height, { length: 40, width: 40 });
    const most = 100 * Math.SQRT2 - 36 + 1;
    expect(most).toBeGreaterThan(36 + 15 * Math.SQRT2);
    // so high that they lean past the ram altogether
    expect(found('box-deep', square(most + 20), PRESS_SHOP)).toBeUndefined();
    const middle = (height: number) => box(height, { length: 74, width: 74 });
    expect(found('box-deep', middle(100 * Math.SQRT2 - 70 + 1 - 0.01), PRESS_SHOP)).toBeUndefined();
    expect(found('box-deep', middle(100 * Math.SQRT2 - 70 + 1 + 0.01), PRESS_SHOP)).toBeDefined();
  });
});

describe('shortest flange on a press', () => {
  const usual: Shop = { ...PRESS_SHOP, profile: 'usual' };
  // over a V of 6 with tools of 85 deg, which stop at 95: 6 / (2 cos 47.5 deg) by hand
  const furthest = 4.44056;

  test.each([90, 95])('%d degrees: by its own angle', (angle) => {
    const limit = 3 / Math.cos((angle * Math.PI) / 360);
    expect(found('flange-short', strip([limit + 0.01, 60], [angle]), usual)).toBeUndefined();
    expect(found('flange-short', strip([limit - 0.01, 60], [angle]), usual)?.limit).toBeCloseTo(limit, 9);
  });

  test.each([100, 135, 179])('%d degrees, past what it bends: what the furthest stroke takes', (angle) => {
    // legs over 90 degrees go to the outside of the bend, which leaves the flange itself longer or shorter
    const finding = found('flange-short', strip([3, 60], [angle]), usual);
    expect(finding?.limit).toBeCloseTo(furthest, 5);
    expect(finding?.source).toContain('A = 95 deg, the furthest it bends');
    expect(found('flange-short', strip([20, 60], [angle]), usual)).toBeUndefined();
  });

  test('tools that go further are taken where the bend needs them', () => {
    const press = PRESS as Press;
    const [punch] = press.punches as readonly [Punch];
    const [die] = press.dies as readonly [Die];
    const sharp: Press = {
      ...press,
      punches: [{ ...punch, angle: 30 }],
      dies: [...press.dies, { ...die, angle: 30, opening: 8 }],
    };
    const acute = (angle: number) =>
      found('flange-short', strip([3, 60], [angle]), { ...usual, press: sharp })?.limit;
    expect(acute(90)).toBeCloseTo(3 * Math.SQRT2, 9);
    expect(acute(120)).toBeCloseTo(4 / Math.cos(Math.PI / 3), 9);
    expect(acute(170)).toBeCloseTo(4 / Math.cos((75 * Math.PI) / 180), 9);
  });

  test('a hem is no longer than the fold it starts as', () => {
    const hemmed = (length: number) =>
      planned({
        family: 'open-box',
        length: 200,
        width: 120,
        height: 50,
        hem: { type: 'closed', length },
      });
    expect(found('flange-short', hemmed(6), usual)).toBeUndefined();
    expect(found('flange-short', hemmed(4), usual)?.limit).toBeCloseTo(furthest, 5);
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
  for (const code of [
    'flange-short',
    'sheet-thick',
    'bend-long',
    'step-narrow',
    'channel-deep',
    'radius-made',
    'cut-large',
    'blank-large',
    'tolerance',
  ])
    expect(found(code, plan, bare), code).toBeUndefined();
});
