import type { Point } from '@tinwright/core';
import fc from 'fast-check';
import Module from 'manifold-3d';
import { expect, test } from 'vitest';
import { depthAt, depthTable } from '../../src/no-fit/depth-table.js';
import { isFree, noFit } from '../../src/no-fit/no-fit.js';
import { type NoFitRing, onGrid, type Region, ringArea, turned } from '../../src/no-fit/ring.js';

const region = (outer: NoFitRing, ...holes: NoFitRing[]): Region => ({
  outer: onGrid(outer),
  holes: holes.map(onGrid),
});
const square = (s: number, x = 0, y = 0): NoFitRing => [
  [x, y],
  [x + s, y],
  [x + s, y + s],
  [x, y + s],
];
const clockwise = (ring: NoFitRing): NoFitRing => ring.toReversed();

/** A star-shaped polygon, notched and pointed. */
const star = fc
  .array(fc.double({ min: 5, max: 60, noNaN: true }), { minLength: 3, maxLength: 14 })
  .map((radii) => {
    const at = (r: number, k: number): Point => {
      const angle = (2 * Math.PI * k) / radii.length;
      return [r * Math.cos(angle), r * Math.sin(angle)];
    };
    return region(radii.map(at));
  });

const way = new Float64Array(2);

test('two squares: the no-fit polygon is a square of both sides, the depth its distance to the rim', () => {
  const table = depthTable(noFit(region(square(10)), region(square(4))));
  expect(depthAt(table, 2, 3, way)).toBe(6); // out to the west: from −4 to 2
  expect(way[0]).toBe(-6);
  expect(depthAt(table, -4, 3, way)).toBe(0);
  expect(depthAt(table, 9.5, 3, way)).toBe(0.5);
});

test('random pieces: free exactly where a general library finds no shared area', async () => {
  const library = await Module();
  library.setup();
  const { CrossSection } = library;
  const polygon = (r: Region, dx = 0, dy = 0) =>
    new CrossSection([r.outer.map(([x, y]): [number, number] => [x + dx, y + dy])]);
  fc.assert(
    fc.property(
      star,
      star,
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.double({ min: -1, max: 1, noNaN: true }),
      (a, b, u, v) => {
        const place = noFit(a, b);
        const [x, y] = [u * 120, v * 120];
        const shared = polygon(a)
          .intersect(polygon(b, x, y))
          .area();
        if (shared > 1e-3) {
          expect(isFree(place, x, y)).toBe(false);
          expect(depthAt(depthTable(place), x, y, way)).toBeGreaterThan(0);
        }
        if (shared < 1e-9) {
          const { box } = place;
          const inBox = x > box[0] && x < box[2] && y > box[1] && y < box[3];
          expect(inBox ? depthAt(depthTable(place), x, y, way) : 0).toBeLessThan(0.05);
        }
      },
    ),
  );
});

test('the depth of A in B is the depth of B in A, to the last bit at points of the grid', () => {
  fc.assert(
    fc.property(
      star,
      star,
      fc.integer({ min: -90, max: 90 }),
      fc.integer({ min: -90, max: 90 }),
      (a, b, x, y) => {
        const [ab, ba] = [noFit(a, b), noFit(b, a)];
        const inside = ([x0, y0, x1, y1]: readonly number[], px: number, py: number) =>
          px > (x0 as number) && px < (x1 as number) && py > (y0 as number) && py < (y1 as number);
        if (!inside(ab.box, x, y)) return;
        const [d, e] = [depthAt(depthTable(ab), x, y, way), depthAt(depthTable(ba), -x, -y, way)];
        expect(Math.abs(d - e)).toBeLessThan(1e-9);
      },
    ),
  );
});

test('a table answers as the winding does, whatever the cell', () => {
  fc.assert(
    fc.property(
      star,
      star,
      fc.array(
        fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
        { minLength: 20, maxLength: 20 },
      ),
      (a, b, points) => {
        const place = noFit(a, b);
        const table = depthTable(place);
        const [x0, y0, x1, y1] = place.box;
        for (const [u, v] of points) {
          const [x, y] = [x0 + u * (x1 - x0) * 0.999 + 1e-7, y0 + v * (y1 - y0) * 0.999 + 1e-7];
          const depth = depthAt(table, x, y, way);
          if (isFree(place, x, y)) expect(depth).toBe(0);
          else expect(depth).toBeLessThan(Math.max(x1 - x0, y1 - y0));
        }
      },
    ),
  );
});

test('a piece as wide as a slot: the gap without width is no border, its middle is as blocked as beside it', () => {
  const slotted = region([
    [0, 0],
    [20, 0],
    [20, 20],
    [12, 20],
    [12, 8],
    [8, 8],
    [8, 20],
    [0, 20],
  ]);
  const exact = depthTable(noFit(slotted, region(square(4))));
  const beside = depthAt(exact, 7, 12, way); // half over the west cheek
  expect(beside).toBeGreaterThan(1);
  expect(depthAt(exact, 8, 12, way)).toBeGreaterThan(1);
  const loose = depthTable(noFit(slotted, region(square(3.5))));
  expect(depthAt(loose, 8.25, 12, way)).toBe(0);
  expect(depthAt(loose, 7.75, 12, way)).toBe(0.25);
});

test('a hole: free inside when the piece is smaller, blocked across its rim, blocked where the piece covers it', () => {
  const plate = region(square(100), clockwise(square(40, 30, 30)));
  const small = depthTable(noFit(plate, region(square(10))));
  expect(depthAt(small, 45, 45, way)).toBe(0);
  expect(depthAt(small, 28, 45, way)).toBe(2);
  expect(depthAt(small, 10, 45, way)).toBe(20); // out to the west, or into the hole
  const large = depthTable(noFit(plate, region(square(60))));
  expect(depthAt(large, 20, 20, way)).toBeGreaterThan(0); // round the whole hole
  const inHole = depthTable(noFit(region(square(10)), plate));
  expect(depthAt(inHole, -45, -45, way)).toBe(0);
});

test('rings keep no corner in a straight side', () => {
  const ring = onGrid([
    [0, 0],
    [5, 0],
    [5, 0],
    [10, 0],
    [10, 10],
    [0, 10],
    [0, 5],
  ]);
  expect(ring).toHaveLength(4);
  expect(ringArea(ring)).toBe(100);
});

test('a ring turned by any angle keeps its area, and lies where its corners turn to', () => {
  const ring = square(10, 5, 5);
  expect(turned(ring, 90)).toEqual(ring.map(([x, y]) => [-y + 0, x + 0]));
  const eighth = turned(ring, 45);
  expect(ringArea(eighth)).toBeCloseTo(100, 9);
  expect(eighth[0]?.[0]).toBeCloseTo(0, 12);
  expect(eighth[0]?.[1]).toBeCloseTo(5 * Math.SQRT2, 12);
});

test('places in line with sides of the border: blocked where everything round them is', () => {
  const bracket = region([
    [0, 0],
    [128, 0],
    [128, 34],
    [34, 34],
    [34, 94],
    [0, 94],
  ]);
  const table = depthTable(noFit(bracket, bracket));
  const ends = (first: 0 | 1) => {
    const all = Array.from({ length: table.runs.length / 5 }, (_, i) => table.runs[5 * i + first] as number);
    return [...new Set(all)];
  };
  const ways = [-0.02, 0.02];
  const depths = ends(0)
    .flatMap((x) => ends(1).map((y): Point => [x, y]))
    .filter(([x, y]) => Math.abs(x) < 127 && Math.abs(y) < 93)
    .map(([x, y]) => ({
      on: depthAt(table, x, y, way),
      beside: Math.min(...ways.flatMap((u) => ways.map((v) => depthAt(table, x + u, y + v, way)))),
    }))
    .filter(({ beside }) => beside > 0.1);
  expect(depths.length).toBeGreaterThan(3);
  expect(Math.min(...depths.map(({ on, beside }) => on - beside))).toBeGreaterThan(-0.03);
});
