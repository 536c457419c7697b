import { isArc, type Loop, type Point, segments } from '@tinwright/core';
import { arcOf, circleLoop, corner, distanceToLoop, loopArea, loopLength } from '@tinwright/core/internal';
import { offsetLoop } from '@tinwright/cutting';
import fc from 'fast-check';
import Module from 'manifold-3d';
import { expect, test } from 'vitest';

const loop = (...points: readonly Point[]): Loop => points.map(([x, y]) => corner(x, y));
const area = (loops: readonly Loop[]) => loops.reduce((sum, l) => sum + loopArea(l), 0);

test('a rectangle grown by 2: four sides, four rounds, area and length by hand', () => {
  const [grown, ...more] = offsetLoop(loop([0, 0], [100, 0], [100, 50], [0, 50]), 2);
  expect(more).toEqual([]);
  expect(grown).toHaveLength(8);
  expect(loopArea(grown as Loop)).toBeCloseTo(5000 + 300 * 2 + Math.PI * 4, 9);
  expect(loopLength(grown as Loop)).toBeCloseTo(300 + 4 * Math.PI, 9);
});

test('a hole shrunk by 2: its corners stay sharp, its circle stays a circle', () => {
  expect(offsetLoop(loop([0, 0], [100, 0], [100, 50], [0, 50]), -2)).toEqual([
    loop([2, 2], [98, 2], [98, 48], [2, 48]),
  ]);
  const [round] = offsetLoop(circleLoop([10, 10], 5), -1.5);
  expect(round).toHaveLength(2);
  expect(loopArea(round as Loop)).toBeCloseTo(Math.PI * 3.5 ** 2, 9);
});

test('a hole smaller than the cut leaves nothing', () => {
  expect(offsetLoop(circleLoop([0, 0], 0.6), -0.75)).toEqual([]);
  expect(offsetLoop(loop([0, 0], [1, 0], [1, 5], [0, 5]), -0.75)).toEqual([]);
});

test('a slot narrower than the cut closes: the outline goes past it, its wider bottom is left as a pocket', () => {
  const keyhole = loop(
    [0, 0],
    [40, 0],
    [40, 30],
    [20.5, 30],
    [20.5, 15],
    [25, 15],
    [25, 5],
    [15, 5],
    [15, 15],
    [19.5, 15],
    [19.5, 30],
    [0, 30],
  );
  const loops = offsetLoop(keyhole, 0.75);
  expect(loops.map((l) => Math.sign(loopArea(l))).toSorted()).toEqual([-1, 1]);
  expect(offsetLoop(keyhole, 0.4)).toHaveLength(1);
});

test('a fillet rounder than the cut shrinks and stays an arc, a tighter one becomes a corner', () => {
  const filleted = (r: number): Loop => [
    { at: [0, 0], bulge: 0 },
    { at: [40, 0], bulge: 0 },
    { at: [40, 10], bulge: 0 },
    { at: [10 + r, 10], bulge: -Math.tan(Math.PI / 8) },
    { at: [10, 10 + r], bulge: 0 },
    { at: [10, 40], bulge: 0 },
    { at: [0, 40], bulge: 0 },
  ];
  const inner = (l: Loop | undefined) =>
    segments(l as Loop)
      .filter((s) => s.bulge < 0)
      .map((s) => arcOf(s).radius);
  expect(inner(offsetLoop(filleted(3), 1)[0])).toEqual([expect.closeTo(2, 9)]);
  expect(inner(offsetLoop(filleted(0.5), 1)[0])).toEqual([]);
  expect(area(offsetLoop(filleted(0.5), 1))).toBeCloseTo(
    area(offsetLoop(loop([0, 0], [40, 0], [40, 10], [10, 10], [10, 40], [0, 40]), 1)),
    9,
  );
});

/** Notched and rounded outlines, as flat patterns are: sides out from a middle, some of them arcs. */
const outline = fc
  .array(fc.tuple(fc.double({ min: 20, max: 60, noNaN: true }), fc.constantFrom(0, 0, 0.2, -0.2, 0.4)), {
    minLength: 4,
    maxLength: 12,
  })
  .map(
    (corners): Loop =>
      corners.map(([r, bulge], k) => {
        const angle = (2 * Math.PI * k) / corners.length;
        return { at: [r * Math.cos(angle), r * Math.sin(angle)], bulge };
      }),
  );

test('random outlines: the area of a general library, and every point of the new line as far off as asked', async () => {
  const library = await Module();
  library.setup();
  const chords = (l: Loop): [number, number][] =>
    segments(l).flatMap((s) => {
      if (!isArc(s)) return [[s.from[0], s.from[1]] as [number, number]];
      const { centre, radius, start, sweep } = arcOf(s);
      const n = Math.ceil(Math.abs(sweep) / 0.01);
      return Array.from({ length: n }, (_, k): [number, number] => {
        const angle = start + (sweep * k) / n;
        return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
      });
    });
  const simple = (section: InstanceType<typeof library.CrossSection>, l: Loop) =>
    Math.abs(section.area() - loopArea(l)) < 0.5 && section.numContour() === 1;
  fc.assert(
    fc.property(
      outline,
      fc.double({ min: -3, max: 3, noNaN: true }).filter((d) => Math.abs(d) > 0.1),
      (l, by) => {
        const section = new library.CrossSection([chords(l)]);
        fc.pre(simple(section, l));
        const loops = offsetLoop(l, by);
        const theirs = section.offset(by, 'Round', 2, 720).area();
        expect(Math.abs(area(loops) - theirs)).toBeLessThan(0.02 + 2e-4 * theirs);
        for (const one of loops)
          for (const { at } of one) expect(distanceToLoop(at, l)).toBeGreaterThan(Math.abs(by) - 2e-5);
      },
    ),
  );
});
