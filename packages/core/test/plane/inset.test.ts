import type { Point } from '@tinwright/core';
import type { Outline } from '@tinwright/core/family';
import { polygon, rectangle } from '@tinwright/core/family';
import { corner, loopArea } from '@tinwright/core/internal';
import { areaPathsD, EndType, inflatePathsD, JoinType, type PathsD } from 'clipper2-ts';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clip, inside } from '../../src/fold/draft/outline.js';

const inset = (outline: Outline, by: number): Outline =>
  outline.reduce<Outline>((left, e, i) => clip(left, inside(outline, i, by), e.name), outline);
const area = (outline: Outline) => loopArea(outline.map((e) => corner(...e.from)));
const points = (outline: Outline) => outline.map((e) => e.from);

/** The same inset by clipper2-ts: offset inwards with mitred corners, eight decimals. */
function theirs(outline: Outline, by: number): PathsD {
  const path = outline.map(({ from: [x, y] }) => ({ x, y }));
  return inflatePathsD([path], -by, JoinType.Miter, EndType.Polygon, 1000, 8);
}

test('a rectangle 40 by 30 cut in by 4 all round: 32 by 22 with the same edge names', () => {
  const small = inset(rectangle(40, 30), 4);
  expect(points(small)).toEqual([
    [4, 4],
    [36, 4],
    [36, 26],
    [4, 26],
  ]);
  expect(small.map((e) => e.name)).toEqual(['south', 'east', 'north', 'west']);
});

test('a rectangle 40 by 30 cut in by 15 or more: nothing stays', () => {
  expect(inset(rectangle(40, 30), 15)).toEqual([]);
  expect(inset(rectangle(40, 30), 16)).toEqual([]);
});

test('a right triangle 30, 40, 50 cut in by 2: similar, inradius 10 goes to 8', () => {
  const triangle = polygon(
    [
      [0, 0],
      [30, 0],
      [0, 40],
    ],
    ['a', 'b', 'c'],
  );
  expect(area(inset(triangle, 2))).toBeCloseTo(600 * 0.8 ** 2, 9);
});

/** Corners in order round an ellipse: always convex. */
const convex = fc
  .tuple(
    fc.uniqueArray(fc.integer({ min: 0, max: 71 }), { minLength: 3, maxLength: 9 }),
    fc.integer({ min: 20, max: 200 }),
    fc.integer({ min: 20, max: 200 }),
  )
  .map(([steps, a, b]) =>
    polygon(
      steps
        .toSorted((x, y) => x - y)
        .map((s): Point => [a * Math.cos((s * Math.PI) / 36), b * Math.sin((s * Math.PI) / 36)]),
      [],
    ),
  );
const fraction = fc.double({ min: 0.01, max: 0.95, noNaN: true });
/** Area by perimeter. The inscribed circle of a convex outline lies between one and two of it. */
const slimness = (outline: Outline) =>
  area(outline) /
  outline.reduce((sum, e, i) => {
    const to = (outline[(i + 1) % outline.length] as Outline[number]).from;
    return sum + Math.hypot(to[0] - e.from[0], to[1] - e.from[1]);
  }, 0);

test('any convex outline cut in all round: the area clipper2-ts finds with mitred corners', () => {
  fc.assert(
    fc.property(convex, fraction, (outline, f) => {
      const by = f * slimness(outline);
      const found = area(inset(outline, by));
      expect(found).toBeGreaterThan(0);
      expect(Math.abs(found - areaPathsD(theirs(outline, by)))).toBeLessThan(1e-4);
    }),
    { numRuns: 300 },
  );
});

test('any convex outline cut in all round: the corners clipper2-ts finds', () => {
  fc.assert(
    fc.property(convex, fraction, (outline, f) => {
      const by = f * slimness(outline);
      const found = points(inset(outline, by));
      const expected = theirs(outline, by)[0] ?? [];
      expect(expected.length).toBeGreaterThan(2);
      for (const { x, y } of expected) {
        const nearest = Math.min(...found.map((p) => Math.hypot(p[0] - x, p[1] - y)));
        expect(nearest).toBeLessThan(1e-4);
      }
    }),
    { numRuns: 300 },
  );
});

test('any convex outline cut in by more than twice its area by its perimeter: nothing stays', () => {
  fc.assert(
    fc.property(convex, fraction, (outline, f) => {
      expect(inset(outline, (2 + f) * slimness(outline))).toEqual([]);
    }),
  );
});

test('any convex outline cut in twice: the same as once by the sum', () => {
  fc.assert(
    fc.property(convex, fraction, (outline, f) => {
      const by = (f / 2) * slimness(outline);
      expect(area(inset(inset(outline, by), by))).toBeCloseTo(area(inset(outline, 2 * by)), 6);
    }),
  );
});
