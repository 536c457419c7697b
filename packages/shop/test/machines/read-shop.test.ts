import { JobError, type Point } from '@tinwright/core';
import { type Brake, DEFAULT_SHOP, EXAMPLE_PRESS, readShop, type Shop } from '@tinwright/shop';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

/** A shop as a file would give it. */
const { assumed: _, stock: __, formerBlock: _block, ...rest } = DEFAULT_SHOP;
const SEAMER = {
  name: 'hand seamer',
  width: 90,
  depth: 30,
  jaw: 8,
  capacity: [{ material: 'mild-steel', thickness: 1 }],
};
const { rearStop: ___, rearStopHeight: ____, ...brake } = DEFAULT_SHOP.brake as Brake; // a file leaves out what a machine has not
const HORNS = { widths: [40, 50], reach: 15, foot: 10, height: 80 };
const PRESS = { ...EXAMPLE_PRESS, punches: EXAMPLE_PRESS.punches.map((p) => ({ ...p, horns: HORNS })) };
const DATA = { ...rest, brake, press: PRESS, handSeamer: SEAMER, cutBy: 'table' };

const inInches = (value: unknown, key = ''): unknown => {
  if (typeof value === 'number')
    return /^(noseAngle|angle|stop|overbend|setBack|force|share|stroke|setting|pierce|fastener)$/.test(key)
      ? value
      : value / 25.4;
  if (Array.isArray(value)) return value.map((v) => inInches(v, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, k === 'costs' ? v : inInches(v, k)]));
};

/** Numbers to a millionth, where inches do not come out even. */
const even = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (_, v) => (typeof v === 'number' ? Math.round(v * 1e6) / 1e6 : v)));

describe('a shop read', () => {
  test('what a file gives is what is there, nothing assumed', () => {
    expect(readShop(DATA)).toEqual({
      ...DEFAULT_SHOP,
      press: PRESS,
      handSeamer: SEAMER,
      cutBy: 'table',
    });
  });

  test('in inches it is the same shop', () => {
    const shop = readShop({ ...(inInches(DATA) as object), units: 'in' });
    expect(even({ ...shop, units: 'mm' })).toEqual(even(readShop(DATA)));
  });

  test('a value a machine cannot be without is told with what it is', () => {
    expect(() => readShop({ units: 'mm', shear: { length: 1000 } })).toThrow(
      'shear.capacity: missing. Give a list: thickest sheet over the full length',
    );
  });

  test('with the least a file can say, every machine has what it cannot be without', () => {
    const capacity = [{ material: 'mild-steel', thickness: 1 }];
    const shop = readShop({
      units: 'mm',
      brake: { length: 500, capacity, fingers: [25] },
      vise: { jaws: 100, capacity },
      riveter: { diameters: [3.2] },
    });
    expect(JSON.stringify(shop)).not.toContain('undefined');
    expect(shop.brake?.finger).toEqual({ foot: 60, upright: 35, noseAngle: 45, noseRadius: 0.5 });
    expect(shop.assumed).toEqual([
      ...[
        'finger',
        'clearHeight',
        'beam',
        'opening',
        'leaf',
        'bed',
        'setBack',
        'lowestFlange',
        'hold',
        'ratedFlange',
        'gaps',
        'overbend',
      ].map((k) => `brake.${k}`),
      'vise.depth',
      'vise.grip',
      'vise.bar',
      'vise.jaw',
      'vise.bench',
      'riveter.nose',
      'costs',
      'rates',
      'margin',
    ]);
  });
});

describe('whatever is changed in a shop, it is read or its problems are told', () => {
  type Step = string | number;
  const paths = (value: unknown, path: readonly Step[] = []): readonly (readonly Step[])[] =>
    typeof value !== 'object' || value === null
      ? [path]
      : [
          path,
          ...Object.entries(value).flatMap(([k, v]) =>
            paths(v, [...path, Array.isArray(value) ? Number(k) : k]),
          ),
        ];
  const withAt = (value: unknown, [step, ...more]: readonly Step[], put: unknown): unknown => {
    if (step === undefined) return put;
    if (Array.isArray(value)) return value.map((v, i) => (i === step ? withAt(v, more, put) : v));
    const group = value as Record<string, unknown>;
    return { ...group, [step]: withAt(group[step], more, put) };
  };
  const all = paths(DATA).slice(1);
  const odd = fc.oneof(
    fc.double(),
    fc.constantFrom<unknown>(
      0,
      -1,
      1e9,
      181,
      Number.NaN,
      Number.POSITIVE_INFINITY,
      '',
      'x',
      '3 in',
      '1/0',
      null,
      true,
      [],
      {},
      [[]],
    ),
    fc.jsonValue(),
  );

  test('one value', () => {
    fc.assert(
      fc.property(fc.constantFrom(...all), odd, (path, put) => {
        const problems = told(() => readShop(withAt(DATA, path, put)));
        for (const { message } of problems)
          expect(message).not.toMatch(/undefined|NaN given, .*NaN|\[object/);
      }),
      { numRuns: 400 },
    );
  });

  test('anything at all', () => {
    fc.assert(fc.property(fc.jsonValue(), (data) => void told(() => readShop(data))));
  });

  function told(work: () => Shop): readonly { readonly message: string }[] {
    try {
      work();
      return [];
    } catch (error) {
      if (!(error instanceof JobError)) throw error;
      expect(error.problems.length).toBeGreaterThan(0);
      return error.problems;
    }
  }
});

describe('what no machine can be is refused at its place', () => {
  const problems = (data: object) => {
    try {
      readShop(data);
    } catch (error) {
      if (error instanceof JobError) return error.problems;
      throw error;
    }
    return [];
  };

  test('a sheet without a length', () => {
    const [first, ...more] = problems({ units: 'mm', sheets: [[0, 1000]] });
    expect(more).toEqual([]);
    expect(first?.path).toEqual(['sheets', 0, 0]);
    expect(first?.message).toBe('0 mm given, more than 0 to 10000 mm allowed');
  });

  describe('a die whose V is another one in its section', () => {
    const half = (degrees: number) => Math.tan((degrees * Math.PI) / 360);
    /** A block with a V of an opening and angle, as drawn. */
    const block = (opening: number, angle: number, shoulder = 0): readonly Point[] => {
      const v = opening / 2;
      const low = -shoulder / half(angle);
      const left: readonly Point[] =
        shoulder === 0
          ? [[-v, 0]]
          : [
              [-v - shoulder, 0],
              [-v + shoulder, low],
            ];
      const right = left.toReversed().map(([x, z]): Point => [-x, z]);
      return [[-20, 0], ...left, [0, -v / half(angle)], ...right, [20, 0], [20, -60], [-20, -60]];
    };
    const die = (section: readonly Point[], opening: number, angle: number) =>
      problems({
        units: 'mm',
        press: { ...PRESS, dies: [{ name: 'V 12', section, opening, angle, sectioned: true }] },
      }).map(({ path, message }) => ({ at: path.at(-1), message }));

    test.each([
      ['as drawn', block(12, 85), 12, 85],
      ['turned the other way', block(12, 85).toReversed(), 12, 85],
      ['drawn from another corner', [...block(12, 85).slice(3), ...block(12, 85).slice(0, 3)], 12, 85],
      ['within a degree and a tenth of a millimetre', block(12, 85), 12.09, 85.9],
      ['shoulders taken off: between its faces', block(12, 85, 0.5), 12, 85],
      ['shoulders taken off: between the shoulders', block(12, 85, 0.5), 13, 85],
      [
        'no V drawn',
        [
          [-20, 0],
          [20, 0],
          [20, -60],
          [-20, -60],
        ] as const,
        12,
        30,
      ],
    ])('%s: read', (_, section, opening, angle) => {
      expect(die(section, opening, angle)).toEqual([]);
    });

    test('its angle, its opening', () => {
      const angle = { at: 'angle', message: '30 deg given, the V of "V 12" is 85 deg in its section' };
      const opening = { at: 'opening', message: '16 mm given, the V of "V 12" is 12 mm wide in its section' };
      expect(die(block(12, 85), 12, 30)).toEqual([angle]);
      expect(die(block(12, 85), 16, 85)).toEqual([opening]);
      expect(die(block(12, 85), 16, 30)).toEqual([opening, angle]);
      expect(die(block(12, 85), 12, 86.1).map((p) => p.at)).toEqual(['angle']);
      expect(die(block(12, 85), 12.11, 85).map((p) => p.at)).toEqual(['opening']);
    });

    test('a slot under the V is not taken for its faces', () => {
      const slotted: readonly Point[] = [
        [-20, 0],
        [-6, 0],
        [-1, -5 / half(85)],
        [-0.9, -12],
        [0.9, -12],
        [1, -5 / half(85)],
        [6, 0],
        [20, 0],
        [20, -60],
        [-20, -60],
      ];
      expect(die(slotted, 12, 30).map((p) => p.message)).toEqual([
        '30 deg given, the V of "V 12" is 85 deg in its section',
      ]);
    });
  });
});
