// Distances and depths of random solids against manifold-3d: two convex solids are as far apart, or as deep in each other,
// as the origin lies from the rim of all differences of their corners.
import type { Vec3 } from '@tinwright/core';
import { overlapDepth, type Prism, prismBetween, prismDistanceUpTo } from '@tinwright/core/internal';
import fc from 'fast-check';
import Module, { type ManifoldToplevel } from 'manifold-3d';
import { beforeAll, expect, test } from 'vitest';
import { cross, dot, minus, size, turned } from '../vectors.js';

const FAR = 1000; // mm, more than any of these lie apart

let library: ManifoldToplevel;
beforeAll(async () => {
  library = await Module();
  library.setup();
});

/** A convex ring of 3 to 6 corners, extruded, turned and moved. */
const solids = fc
  .record({
    steps: fc.uniqueArray(fc.integer({ min: 0, max: 23 }), { minLength: 3, maxLength: 6 }),
    wide: fc.integer({ min: 3, max: 20 }),
    deep: fc.integer({ min: 3, max: 20 }),
    thick: fc.integer({ min: 1, max: 15 }),
    turns: fc.tuple(...([0, 1, 2] as const).map(() => fc.integer({ min: 0, max: 23 }))),
    at: fc.tuple(...([0, 1, 2] as const).map(() => fc.integer({ min: -18, max: 18 }))),
  })
  .map(({ steps, wide, deep, thick, turns, at }): Prism => {
    const ring = steps
      .toSorted((a, b) => a - b)
      .map((s) => [wide * Math.cos((s * Math.PI) / 12), deep * Math.sin((s * Math.PI) / 12)] as const);
    const lift = (z: number) =>
      ring.map(([x, y]) => turned([x, y, z], turns).map((v, k) => v + (at[k] ?? 0)));
    return prismBetween(lift(0) as unknown as Vec3[], lift(thick) as unknown as Vec3[]);
  });

const cornersOf = ({ corners }: Prism): readonly Vec3[] =>
  Array.from({ length: corners.length / 3 }, (_, i) => corners.slice(3 * i, 3 * i + 3) as unknown as Vec3);

/** Distance of two solids, the depth of their overlap negative: of the origin from the hull of all differences. */
function apart(a: Prism, b: Prism): number {
  const points = cornersOf(a).flatMap((p) =>
    cornersOf(b).map((q) => [...minus(p, q)] as [number, number, number]),
  );
  const hull = library.Manifold.hull(points);
  const { vertProperties, triVerts, numProp } = hull.getMesh();
  const vertex = (i: number): Vec3 =>
    [0, 1, 2].map((k) => vertProperties[i * numProp + k]) as unknown as Vec3;
  let [height, far] = [-Infinity, Infinity];
  for (let i = 0; i < triVerts.length; i += 3) {
    const [p, q, r] = [0, 1, 2].map((k) => vertex(triVerts[i + k] as number)) as [Vec3, Vec3, Vec3];
    const n = cross(minus(q, p), minus(r, p));
    if (size(n) < 1e-6) continue;
    height = Math.max(height, -dot(n, p) / size(n));
    far = Math.min(far, fromTriangle(p, q, r));
  }
  hull.delete();
  return height <= 0 ? height : far;
}

/** Distance of the origin from a triangle. */
function fromTriangle(p: Vec3, q: Vec3, r: Vec3): number {
  const sides = [
    [p, q],
    [q, r],
    [r, p],
  ] as const;
  const n = cross(minus(q, p), minus(r, p));
  const over = sides.every(([a, b]) => dot(cross(minus(b, a), minus([0, 0, 0], a)), n) >= 0);
  if (over) return Math.abs(dot(n, p)) / size(n);
  return Math.min(
    ...sides.map(([a, b]) => {
      const u = minus(b, a);
      const t = Math.max(0, Math.min(1, -dot(a, u) / dot(u, u)));
      return size(a.map((v, k) => v + t * (u[k] as number)) as unknown as Vec3);
    }),
  );
}

test('any two solids are as far apart as manifold-3d has them, or as deep in each other', () => {
  fc.assert(
    fc.property(solids, solids, (a, b) => {
      const found = prismDistanceUpTo(a, b, FAR);
      expect(Math.abs(found - apart(a, b))).toBeLessThan(1e-4);
      expect(Math.abs(overlapDepth(a, b) - Math.max(0, -found))).toBeLessThan(1e-9);
      expect(Math.abs(prismDistanceUpTo(b, a, FAR) - found)).toBeLessThan(1e-9);
    }),
    { numRuns: 150 },
  );
});

test('known to be enough, a distance is not looked for: what is told is that, and no more', () => {
  fc.assert(
    fc.property(solids, solids, fc.integer({ min: 1, max: 20 }), (a, b, enough) => {
      const whole = prismDistanceUpTo(a, b, FAR);
      expect(Math.abs(prismDistanceUpTo(a, b, enough) - Math.min(whole, enough))).toBeLessThan(1e-9);
    }),
    { numRuns: 60 },
  );
});

/** An upright box between two corners. */
function box([x, y, z]: Vec3, [u, v, w]: Vec3): Prism {
  const ring = (h: number): Vec3[] => [
    [x, y, h],
    [u, y, h],
    [u, v, h],
    [x, v, h],
  ];
  return prismBetween(ring(z), ring(w));
}

test('boxes that lie side by side, corner to corner, or share a face: by hand', () => {
  const one = box([0, 0, 0], [10, 10, 10]);
  expect(prismDistanceUpTo(one, box([13, 0, 0], [20, 10, 10]), FAR)).toBeCloseTo(3, 12);
  expect(prismDistanceUpTo(one, box([13, 14, 0], [20, 20, 10]), FAR)).toBeCloseTo(5, 12);
  expect(prismDistanceUpTo(one, box([12, 14, 15], [20, 20, 20]), FAR)).toBeCloseTo(Math.sqrt(45), 12);
  expect(prismDistanceUpTo(one, box([10, 2, 2], [20, 8, 8]), FAR)).toBeCloseTo(0, 12);
  expect(prismDistanceUpTo(one, box([9.5, 2, 2], [20, 8, 8]), FAR)).toBeCloseTo(-0.5, 12);
  // a corner a hair beside a face, and straight over it
  expect(prismDistanceUpTo(one, box([10.05, 2, 11], [20, 8, 12]), FAR)).toBeCloseTo(Math.hypot(0.05, 1), 12);
  expect(prismDistanceUpTo(one, box([9.95, 2, 11], [20, 8, 12]), FAR)).toBeCloseTo(1, 12);
  // one within the other: the shortest way out
  expect(prismDistanceUpTo(one, box([3, 3, 3], [6, 6, 6]), FAR)).toBeCloseTo(-6, 12);
});

test('faces look outwards, their normals are 1 long, and no direction of an edge comes twice', () => {
  fc.assert(
    fc.property(solids, (solid) => {
      const corners = cornersOf(solid);
      for (let i = 0; i < solid.normals.length; i += 3) {
        const n = solid.normals.slice(i, i + 3) as unknown as Vec3;
        expect(size(n)).toBeCloseTo(1, 12);
        const heights = corners.map((c) => dot(n, c)).toSorted((p, q) => q - p);
        // a face holds three corners at least, and nothing lies before it
        expect((heights[0] as number) - (heights[2] as number)).toBeLessThan(1e-9);
        expect((heights[0] as number) - (heights.at(-1) as number)).toBeGreaterThan(1e-3);
      }
      const ways = Array.from({ length: solid.directions.length / 3 }, (_, i) =>
        solid.directions.slice(3 * i, 3 * i + 3),
      ) as unknown as Vec3[];
      expect(solid.normals).toHaveLength(3 * (solid.sides + 2));
      for (const [i, u] of ways.entries())
        for (const v of ways.slice(i + 1)) expect(size(cross(u, v))).toBeGreaterThan(1e-6);
    }),
    { numRuns: 60 },
  );
});
