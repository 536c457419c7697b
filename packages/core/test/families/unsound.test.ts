// What a family of one's own cannot have meant: told by panel, value and what is allowed, before anything is made of it.
import { JobError, makePart } from '@tinwright/core';
import {
  asked,
  corners,
  cutout,
  defineFamily,
  flange,
  hem,
  hole,
  mark,
  mitre,
  nip,
  panel,
  polygon,
  rectangle,
  scribe,
  site,
  slot,
  value,
  wired,
} from '@tinwright/core/family';
import { describe, expect, test } from 'vitest';

const STOCK = { material: 'mild-steel', thickness: 1 } as const;

/** What a part is refused with whose family builds this, on a plate of 100 x 60; null where it is made. */
function saidOf(build: unknown): string | null {
  const family = defineFamily({
    name: 'own-plate',
    values: { side: value.size('of the plate') },
    describe: { title: 'plate', summary: 'A plate.', example: { side: 50 } },
    build: (() => build) as never,
  });
  try {
    makePart(family, { side: 50 }, STOCK);
    return null;
  } catch (error) {
    if (!(error instanceof JobError)) return `bare ${String(error)}`;
    return error.message;
  }
}

const PLATE = panel('base', rectangle(100, 60));
const loop = (...at: readonly (readonly [number, number, number?])[]) =>
  at.map(([x, y, bulge = 0]) => ({ at: [x, y] as const, bulge }));

describe('a build that is none', () => {
  test.each([
    ['nothing', undefined, 'undefined given'],
    ['a word', 'base', '"base" given'],
    ['a number', 5, '5 given'],
    ['one verb', PLATE, 'one verb given'],
    ['a list of words', ['base'], '"base" given as verb 1'],
    ['a list with nothing in it', [PLATE, undefined], 'undefined given as verb 2'],
  ])('%s', (_, build, given) => {
    expect(saidOf(build)).toBe(`${given}, a list of verbs allowed. Mend the code of the family.`);
  });

  test.each([
    ['no panel', []],
    ['a mark alone', [asked('side', 50, 'x')]],
  ])('%s', (_, build) => {
    expect(saidOf(build)).toContain('no panel given, one or more allowed');
  });

  test('two panels that hang on nothing', () => {
    expect(saidOf([PLATE, panel('lid', rectangle(100, 60))])).toContain(
      'panels "base" and "lid" hang on nothing, one such panel allowed',
    );
  });

  test('a panel without an outline', () => {
    for (const outline of [undefined, null, 'round', [], rectangle(9, 9).slice(2)])
      expect(saidOf([panel('base', outline as never)])).toContain(
        'given, an outline of 3 corners or more allowed',
      );
  });

  test.each([
    ['nothing', rectangle(0, 0)],
    ['a line', rectangle(100, 0)],
    [
      'clockwise',
      polygon(
        [
          [0, 0],
          [0, 60],
          [100, 60],
          [100, 0],
        ],
        [],
      ),
    ],
  ])('a panel that goes round %s', (_, outline) => {
    expect(saidOf([panel('base', outline)])).toContain('panel "base" encloses nothing');
  });
});

/** Numbers that are none, and what is no number. */
const NONE = [Number.NaN, Infinity, -Infinity, undefined, null, '5', {}] as unknown as readonly number[];

type Row = readonly [where: string, build: (n: number) => readonly unknown[]];
const on = (step: (n: number) => unknown) => (n: number) => [PLATE, step(n)];
const WALL = ['base', 'south'] as const;
const seat = { panel: 'base', at: [50, 30], up: [0, 1] } as const;
const FACES = [{ panel: 'base', face: 'marked' }] as const;
const L = (n: number) => ({
  loop: [...loop([20, 20], [30, 20]), { at: [30, 30] as const, bulge: n }],
  by: [],
});

/** Verbs with a number that may be anything within reach. */
const PLACES: readonly Row[] = [
  [
    'panel "base": corner 2',
    (n) => [
      panel(
        'base',
        polygon(
          [
            [0, 0],
            [n, 0],
            [100, 60],
            [0, 60],
          ],
          [],
        ),
      ),
    ],
  ],
  ['panel "base": hole 1', on((n) => hole('base', { at: [20, n], diameter: 5 }))],
  ['panel "base": cut-out 1', on((n) => cutout('base', { loop: loop([20, 20], [n, 20], [30, 30]), by: [] }))],
  ['panel "base": cut-out 1, bulge', on((n) => cutout('base', L(n)))],
  ['panel "base": scribed line 1', on((n) => scribe('base', [10, 10], [20, n]))],
  ['panel "base": mark 1', on((n) => mark('base', { kind: 'k', at: [n, 10], joint: 'j' }))],
  ['panel "wall": height', on((n) => flange('wall', WALL, { height: n }))],
  [
    'panel "wall": corner 4',
    on((n) =>
      flange('wall', WALL, {
        height: 20,
        far: [
          [0, n],
          [100, 20],
        ],
      }),
    ),
  ],
  ['size "side" asked for', on((n) => asked('side', n, 'x'))],
  ['site "top"', on((n) => site('top', FACES, { ...seat, at: [n, 30] }))],
  ['site "top"', on((n) => site('top', FACES, { ...seat, up: [0, n] }))],
];

/** Verbs with a number that may be nothing. */
const ROOMS: readonly Row[] = [
  ['panel "base": gap of corner style "mitre"', on((n) => corners(['base'], mitre(n)))],
];

/** Verbs with a size. */
const SIZES: readonly Row[] = [
  ['panel "base": hole 1, diameter', on((n) => hole('base', { at: [20, 20], diameter: n }))],
  [
    'panel "base": hole 2, diameter',
    (n) => [PLATE, hole('base', { at: [50, 20], diameter: 5 }), hole('base', { at: [20, 20], diameter: n })],
  ],
  ['panel "base": slot, width', on((n) => slot('base', { edge: 'south', at: [50, 0], width: n, depth: 10 }))],
  ['panel "base": slot, depth', on((n) => slot('base', { edge: 'south', at: [50, 0], width: 4, depth: n }))],
  [
    'panel "base": relief of corner style "mitre"',
    on((n) => corners(['base'], mitre(0.5, { kind: 'hole', diameter: n }))),
  ],
  [
    'panel "base": relief of corner style "mitre"',
    on((n) => corners(['base'], mitre(0.5, { kind: 'slot', depth: n }))),
  ],
];

describe('a number', () => {
  test.each([...PLACES, ...ROOMS, ...SIZES])('%s: none', (where, build) => {
    for (const n of NONE) {
      const said = saidOf(build(n));
      expect(said).toContain(`${where}: `);
      expect(said).toMatch(/ given, .+ to .+ allowed/);
    }
  });

  test.each(PLACES)('%s: out of reach', (where, build) => {
    for (const n of [1e6, -1e6]) expect(saidOf(build(n))).toContain(`${where}: ${n} mm given, -100000 mm to`);
  });

  test.each([...ROOMS, ...SIZES])('%s: negative', (where, build) => {
    expect(saidOf(build(-5))).toContain(`${where}: -5 mm given, 0`);
    expect(saidOf(build(4))).toBeNull();
  });

  test.each(SIZES)('%s: nothing, tiny and very large', (where, build) => {
    expect(saidOf(build(0))).toContain(`${where}: 0 mm given, 0.01 mm to 10000 mm allowed`);
    expect(saidOf(build(1e-6))).toContain(`${where}: 0.000001 mm given, 0.01 mm to 10000 mm allowed`);
    expect(saidOf(build(1e6))).toContain(`${where}: 1000000 mm given, 0.01 mm to 10000 mm allowed`);
  });

  const BENDS: readonly Row[] = [
    ['an angle', on((n) => flange('wall', WALL, { height: 20, angle: n }))],
    ['a radius', on((n) => flange('wall', WALL, { height: 20, insideRadius: n }))],
    ['a spread', on((n) => flange('wall', WALL, { height: 20, spread: n }))],
    ['an inset', on((n) => flange('wall', WALL, { height: 20, inset: [n, 0] }))],
    ['the width of a hem', on((n) => hem('hem', WALL, { type: 'open', length: n }))],
    ['the gap of a hem', on((n) => hem('hem', WALL, { type: 'open', length: 8, gap: n }))],
    ['the gap of a teardrop', on((n) => hem('hem', WALL, { type: 'teardrop', length: 8, gap: n }))],
    ['a wire', on((n) => wired('edge', WALL, { diameter: n, allowance: null }))],
    ['what a wire takes', on((n) => wired('edge', WALL, { diameter: 3, allowance: n }))],
    ['the lift of a site', on((n) => site('top', FACES, { ...seat, lift: n }))],
    ['the width of a site', on((n) => site('top', FACES, seat, n))],
    ['the hole of a mark', on((n) => mark('base', { kind: 'k', at: [9, 9], joint: 'j', hole: n }))],
    ['a nip', (n) => [panel('base', nip(rectangle(100, 60), ['south', 'east'], n, 'nip'))]],
    ['a rectangle', (n) => [panel('base', rectangle(100, n))]],
  ];
  test.each(BENDS)('%s: refused as it should be, never a bare error', (_, build) => {
    for (const n of [...NONE.slice(0, 3), '5x', -1e6, 1e6]) {
      const said = saidOf(build(n as number));
      expect(said).toMatch(/given|panel|hem/);
      expect(said).not.toMatch(/^bare|fault of the program/);
    }
  });

  test.each(BENDS.slice(4, 9))('%s: negative or nothing', (_, build) => {
    for (const n of [-5, -1e-6]) expect(saidOf(build(n))).toMatch(/given|hem/);
  });
});
