// Verifiers are shown faults and must name them.

import type { FlatPattern, Formed, Unit } from '@tinwright/core';
import { kFactor, verifyFlat, verifyForm } from '@tinwright/core';
import { flange, fold, hole, panel, rectangle, slot } from '@tinwright/core/family';
import { circleLoop, form, inWords, sayIn, unfold } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const sheet = { thickness: 1, insideRadius: 1, rule: kFactor(0.42) };
const part = fold(
  sheet,
  panel('base', rectangle(60, 40)),
  flange('north', ['base', 'north'], { height: 20 }),
  hole('base', { at: [20, 20], diameter: 6 }),
);
const flat = unfold(part);
const formed = form(part);
const codes = (f: FlatPattern) => verifyFlat(f).map((x) => x.code);
const bend = flat.bends[0] as FlatPattern['bends'][number];

test('a sound pattern and a sound form have no flaws', () => {
  expect(verifyFlat(flat)).toEqual([]);
  expect(verifyForm(formed, [{ name: 'length', value: 60, axis: 'x', over: 'all' }])).toEqual([]);
});

const move = (f: FlatPattern, i: number, by: readonly [number, number]): FlatPattern => ({
  ...f,
  outline: f.outline.map((v, k) => (k === i ? { ...v, at: [v.at[0] + by[0], v.at[1] + by[1]] } : v)),
});

test.each<[string, FlatPattern, string]>([
  ['a corner pulled across the pattern', move(flat, 0, [70, 30]), 'flat-crosses'],
  [
    'a pattern far up that crosses itself',
    {
      ...flat,
      outline: (
        [
          [0, 100],
          [10, 110],
          [10, 100],
          [0, 110.5],
        ] as const
      ).map((at) => ({ at, bulge: 0 })),
    },
    'flat-crosses',
  ],
  [
    'a pattern far to the right that crosses itself',
    {
      ...flat,
      outline: (
        [
          [100, 0],
          [110, 10],
          [110, 0],
          [100, 10.5],
        ] as const
      ).map((at) => ({ at, bulge: 0 })),
    },
    'flat-crosses',
  ],
  [
    'a slit without width',
    {
      ...flat,
      outline: (
        [
          [0, 0],
          [60, 0],
          [60, 20],
          [30, 20],
          [60, 20],
          [60, 40],
          [0, 40],
        ] as const
      ).map((at) => ({ at, bulge: 0 })),
    },
    'flat-crosses',
  ],
  [
    'a cut of no length',
    { ...flat, outline: [flat.outline[0] as FlatPattern['outline'][number], ...flat.outline] },
    'flat-zero',
  ],
  ['an outline run clockwise', { ...flat, outline: flat.outline.toReversed() }, 'flat-turn'],
  ['a corner that is not a number', move(flat, 0, [Number.NaN, 0]), 'flat-number'],
  ['a hole over the edge', { ...flat, holes: [circleLoop([0, 20], 5)] }, 'flat-hole'],
  ['a hole outside', { ...flat, holes: [circleLoop([-40, 20], 5)] }, 'flat-hole'],
  [
    'two holes that overlap',
    { ...flat, holes: [circleLoop([20, 20], 5), circleLoop([24, 20], 5)] },
    'flat-holes',
  ],
  ['a hole in a hole', { ...flat, holes: [circleLoop([20, 20], 5), circleLoop([20, 20], 2)] }, 'flat-holes'],
  [
    'a bend line that stops short',
    { ...flat, bends: [{ ...bend, line: [bend.line[0], [30, bend.line[1][1]]] }] },
    'bend-end',
  ],
  ['a zone unlike its allowance', { ...flat, bends: [{ ...bend, zone: bend.zone + 0.01 }] }, 'bend-zone'],
  [
    'a deduction that does not add up',
    { ...flat, bends: [{ ...bend, terms: { ...bend.terms, deduction: 1 } }] },
    'bend-terms',
  ],
  [
    'an edge moved out',
    {
      ...flat,
      outline: flat.outline.map((v) => (v.at[0] > 59 ? { ...v, at: [60.01, v.at[1]] as const } : v)),
    },
    'flat-sum',
  ],
  [
    'an edge moved in',
    {
      ...flat,
      outline: flat.outline.map((v) => (v.at[0] > 59 ? { ...v, at: [59.99, v.at[1]] as const } : v)),
    },
    'flat-sum',
  ],
  [
    'a blank that is not the box',
    { ...flat, blank: { ...flat.blank, max: [61, flat.blank.max[1]] } },
    'flat-blank',
  ],
])('%s is named', (_, faulty, code) => {
  expect(codes(faulty)).toContain(code);
});

test('a size that did not come out is named with both figures', () => {
  const [flaw] = verifyForm(formed, [{ name: 'width', value: 41, axis: 'y', over: 'all' }]);
  expect(flaw).toMatchObject({ code: 'form-size', size: 'width' });
  expect(inWords(flaw?.message ?? '', sayIn('mm'))).toBe('width comes out at 40 mm, 41 mm asked');
});

test('a bend torn from its flange is named', () => {
  const torn: Formed = {
    ...formed,
    bends: formed.bends.map((b) => ({ ...b, frame: { ...b.frame, origin: [0, 50, 2] as const } })),
  };
  expect(verifyForm(torn, []).map((f) => f.code)).toContain('form-join');
});

test('a strip that runs into itself is named with its panels', () => {
  // d hangs from c at 20 mm, its flat from 18 mm down, right through a: 18 mm to pull it out upwards
  const spiral = fold(
    sheet,
    panel('a', rectangle(60, 20)),
    flange('b', ['a', 'east'], { height: 20 }),
    flange('c', ['b', 'far'], { height: 30 }),
    flange('d', ['c', 'far'], { height: 40 }),
  );
  const [flaw, ...more] = verifyForm(form(spiral), []);
  expect(more).toEqual([]);
  expect(flaw?.code).toBe('form-clash');
  const said = (unit: Unit) => inWords(flaw?.message ?? '', sayIn(unit));
  expect(said('mm')).toBe('panels a and d pass through each other, 18 mm deep');
  expect(said('in')).toBe('panels a and d pass through each other, 0.709 in deep');
});

test('a bend in the way of a panel that is not its own, or of another bend, is named', () => {
  const bent = formed.bends[0] as Formed['bends'][number];
  const twin = (y: number) => {
    const [ox, oy, oz] = bent.frame.origin;
    const other = { ...bent, id: 'other', parent: 'elsewhere' };
    const frame = { ...bent.frame, origin: [ox, oy + y, oz] as const };
    const flaws = verifyForm({ ...formed, bends: [bent, { ...other, frame }] }, []);
    return flaws.filter((f) => f.code === 'form-clash').map((f) => inWords(f.message, sayIn('mm')));
  };
  expect(twin(-20).join()).toMatch(/^panel base passes through the bend other/);
  expect(twin(0.2).join()).toContain('bends north and other pass through each other');
});

test('a bend line that leaves the material between its ends is named', () => {
  const corners = [
    [0, 0],
    [60, 0],
    [60, 40],
    [40, 40],
    [30, 5],
    [20, 40],
    [0, 40],
  ] as const;
  const outline = corners.map((at) => ({ at, bulge: 0 }));
  const across = {
    ...bend,
    line: [
      [0, 20],
      [60, 20],
    ] as const,
  };
  expect(codes({ ...flat, outline, holes: [], bends: [across] })).toContain('bend-off');
});

test('a slot in a panel that is not there is refused with the nearest name', () => {
  const cut = { edge: 'north', at: [10, 40] as const, width: 2, depth: 5 };
  expect(() => fold(sheet, panel('base', rectangle(60, 40)), slot('bass', cut))).toThrow(
    /no panel "bass".*base/,
  );
});
