import { JobError } from '@tinwright/core';
import { corner, loopArea } from '@tinwright/core/internal';
import { expect, test } from 'vitest';
import { biteHole, outOfHole } from '../../../src/fold/flat/bite-hole.js';

const strip = [corner(0, 0), corner(60, 0), corner(60, 10), corner(0, 10)];

test('a hole at a corner takes a quarter of a circle', () => {
  const bitten = biteHole(strip, { centre: [60, 10], radius: 4 });
  expect(loopArea(bitten)).toBeCloseTo(600 - (Math.PI * 16) / 4, 9);
});

test('a hole that would cut the outline in two is refused, in the unit of who asks', () => {
  try {
    biteHole(strip, { centre: [30, 5], radius: 10.16 });
    expect.unreachable();
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    expect(error.problems).toMatchObject([{ code: 'relief-too-large', path: ['relief'] }]);
    expect(error.message).toContain('a relief hole of 20.32 mm is too large');
    expect(new JobError(error.refusals, 'in').message).toContain('a relief hole of 0.8 in is too large');
  }
});

test('a hole that swallows the outline or misses it is refused', () => {
  for (const circle of [
    { centre: [30, 5], radius: 100 },
    { centre: [30, 200], radius: 4 },
  ] as const)
    expect(() => biteHole(strip, circle)).toThrow('is too large');
});

/** An L: its corner at (20, 10) is turned inwards. */
const angled = [corner(0, 0), corner(60, 0), corner(60, 10), corner(20, 10), corner(20, 40), corner(0, 40)];

test.each<[string, readonly [number, number], number, number]>([
  // of the whole circle, what of it lies in the metal
  ['at an outward corner: a quarter', [60, 10], 4, Math.PI * 4],
  ['at the inward corner: three quarters', [20, 10], 4, Math.PI * 12],
  ['on an edge: a half', [40, 10], 4, Math.PI * 8],
  ['on an edge, its middle 2 outside: a segment', [40, 12], 4, 16 * Math.acos(0.5) - 2 * Math.sqrt(12)],
  [
    'on an edge, its middle 2 inside: the rest of it',
    [40, 8],
    4,
    Math.PI * 16 - (16 * Math.acos(0.5) - 2 * Math.sqrt(12)),
  ],
])('a hole %s, whichever corner the outline starts with', (_, centre, radius, area) => {
  for (const start of angled.keys()) {
    const loop = [...angled.slice(start), ...angled.slice(0, start)];
    const bitten = biteHole(loop, { centre, radius });
    expect(loopArea(bitten)).toBeCloseTo(600 + 600 - area, 9);
    for (const { at } of bitten)
      expect(Math.hypot(at[0] - centre[0], at[1] - centre[1])).toBeGreaterThan(radius - 1e-9);
    expect(bitten.filter((v) => v.bulge !== 0)).toHaveLength(1);
  }
});

test('a second hole beside the first is taken too; one into the arc of the first is refused', () => {
  const once = biteHole(angled, { centre: [20, 10], radius: 3 });
  expect(loopArea(biteHole(once, { centre: [60, 10], radius: 3 }))).toBeCloseTo(
    1200 - Math.PI * (6.75 + 2.25),
    9,
  );
  expect(() => biteHole(once, { centre: [25, 10], radius: 3 })).toThrow('is too large');
});

test('a hole over two edges that face each other is refused: the outline would fall in two', () => {
  for (const start of angled.keys())
    expect(() =>
      biteHole([...angled.slice(start), ...angled.slice(0, start)], { centre: [40, 5], radius: 6 }),
    ).toThrow('is too large');
});

test('a line is pulled back to the circle at the end that lies in it, at both, or at neither', () => {
  const circle = { centre: [10, 5], radius: 5 } as const;
  expect(
    outOfHole(
      [
        [10, 5],
        [30, 5],
      ],
      circle,
    ),
  ).toEqual([
    [15, 5],
    [30, 5],
  ]);
  expect(
    outOfHole(
      [
        [30, 5],
        [10, 5],
      ],
      circle,
    ),
  ).toEqual([
    [30, 5],
    [15, 5],
  ]);
  expect(
    outOfHole(
      [
        [0, 20],
        [30, 20],
      ],
      circle,
    ),
  ).toEqual([
    [0, 20],
    [30, 20],
  ]);
  expect(
    outOfHole(
      [
        [-20, 5],
        [7, 5],
      ],
      circle,
    ),
  ).toEqual([
    [-20, 5],
    [5, 5],
  ]);
});

test('a hole in the mouth of a notch bites a corner off either side of it, whichever corner comes first', () => {
  // the sides of the notch are 2 from its middle: of a circle of 3 round (20, 40), what is below 40 and beyond them
  const fork = [
    corner(0, 0),
    corner(40, 0),
    corner(40, 40),
    corner(22, 40),
    corner(22, 10),
    corner(18, 10),
    corner(18, 40),
    corner(0, 40),
  ];
  const cap = 9 * Math.acos(2 / 3) - 2 * Math.sqrt(5);
  for (const start of fork.keys()) {
    const bitten = biteHole([...fork.slice(start), ...fork.slice(0, start)], { centre: [20, 40], radius: 3 });
    expect(loopArea(bitten)).toBeCloseTo(1600 - 120 - cap, 9);
    expect(bitten.filter((v) => v.bulge !== 0)).toHaveLength(2);
  }
});
