import { JobError, type Point } from '@tinwright/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFAULT_SHOP, EXAMPLE_PRESS, readShop, type Shop } from '../../src/index.js';
import { crossesItself } from '../../src/machines/press-problems.js';

/** A shop as a file would give it. */
const { assumed: _, vise, shear, brake, ...rest } = DEFAULT_SHOP;
const DATA = { ...rest, brake, vise, shear, press: EXAMPLE_PRESS };

const inInches = (value: unknown, key = ''): unknown => {
  if (typeof value === 'number')
    return /^(noseAngle|angle|stop|overbend|setBack|force)$/.test(key) ? value : value / 25.4;
  if (Array.isArray(value)) return value.map((v) => inInches(v, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, k === 'costs' ? v : inInches(v, k)]));
};

/** Numbers to a millionth, where inches do not come out even. */
const even = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (_, v) => (typeof v === 'number' ? Math.round(v * 1e6) / 1e6 : v)));

describe('a shop read', () => {
  test('what a file gives is what is there, nothing assumed', () => {
    expect(readShop(DATA)).toEqual({ ...DEFAULT_SHOP, press: EXAMPLE_PRESS });
  });

  test('in inches it is the same shop', () => {
    const shop = readShop({ ...(inInches(DATA) as object), units: 'in' });
    expect(even({ ...shop, units: 'mm' })).toEqual(even(readShop(DATA)));
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
        'gaps',
        'overbend',
      ].map((k) => `brake.${k}`),
      'vise.depth',
      'vise.grip',
      'riveter.nose',
      'costs',
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

describe('a section crosses itself', () => {
  const square: readonly Point[] = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ];

  test.each([
    ['a square: no', square, false],
    ['turned the other way: no', square.toReversed(), false],
    ['a bow tie', [square[0], square[2], square[1], square[3]], true],
    [
      'a corner on another side',
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [5, 0],
        [0, 10],
      ],
      true,
    ],
    [
      'an L: no',
      [
        [0, 0],
        [10, 0],
        [10, 4],
        [4, 4],
        [4, 10],
        [0, 10],
      ],
      false,
    ],
    [
      'two sides on one line that do not meet: no',
      [
        [0, 0],
        [2, 0],
        [2, 4],
        [6, 4],
        [6, 0],
        [8, 0],
        [8, 9],
        [0, 9],
      ],
      false,
    ],
    [
      'a corner twice',
      [
        [0, 0],
        [10, 0],
        [5, 5],
        [10, 10],
        [0, 10],
        [5, 5],
      ],
      true,
    ],
  ])('%s', (_, section, crosses) => {
    expect(crossesItself(section as readonly Point[])).toBe(crosses);
  });
});
