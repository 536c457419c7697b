// The bent material of a bend against points taken all over it, and against manifold-3d's clipping of what reaches into it.
import type { FormedBend, Vec3 } from '@tinwright/core';
import { prismBetween } from '@tinwright/core/internal';
import fc from 'fast-check';
import Module, { type ManifoldToplevel } from 'manifold-3d';
import { beforeAll, expect, test } from 'vitest';
import { boxOfPieces } from '../../../src/fold/formed/extent.js';
import { lumpDepth, lumpsOf } from '../../../src/fold/formed/lump.js';
import { shellDepth, shellStrips } from '../../../src/fold/formed/shell.js';
import { dot, minus, size, turned } from '../vectors.js';

let library: ManifoldToplevel;
beforeAll(async () => {
  library = await Module();
  library.setup();
});

const steps = (most: number) => fc.integer({ min: 0, max: most });
const turns = fc.tuple(steps(23), steps(23), steps(23));
const place = fc.tuple(steps(40), steps(40), steps(40));

/** A bend somewhere in space; its ends slant by `lean` over the whole turn. */
const bends = (lean: number) =>
  fc
    .record({
      turns,
      place,
      sweep: fc.integer({ min: 5, max: 235 }),
      inside: steps(8),
      thick: fc.integer({ min: 1, max: 4 }),
    })
    .chain((at) =>
      fc
        .tuple(fc.integer({ min: -lean, max: lean }), fc.integer({ min: -lean, max: lean }))
        .map((ends) => ({ ...at, ends })),
    )
    .map(({ turns, place, sweep, inside, thick, ends }): FormedBend => {
      const [x, y, z] = (
        [
          [1, 0, 0],
          [0, 1, 0],
          [0, 0, 1],
        ] as const
      ).map((v) => turned(v, turns)) as [Vec3, Vec3, Vec3];
      return {
        id: 'bend',
        parent: 'base',
        frame: { origin: place, x, y, z },
        sweep: (sweep * Math.PI) / 180,
        insideRadius: inside,
        outsideRadius: inside + thick,
        low: [0, ends[0]],
        high: [20, 20 + ends[1]],
      };
    });

/** A point of a bend's own frame in space. */
const inSpace = ({ frame: { origin, x, y, z } }: FormedBend, [s, u, v]: Vec3): Vec3 =>
  [0, 1, 2].map(
    (k) => (origin[k] as number) + s * (x[k] as number) + u * (y[k] as number) + v * (z[k] as number),
  ) as unknown as Vec3;

test('the box round a bend holds all of it and no more, wherever it stands and however its ends slant', () => {
  fc.assert(
    fc.property(bends(12), (bend) => {
      const { min, max } = boxOfPieces([], [bend], 1);
      const seen = { min: [Infinity, Infinity, Infinity], max: [-Infinity, -Infinity, -Infinity] };
      const PARTS = 400;
      for (let i = 0; i <= PARTS; i++) {
        const phi = (bend.sweep * i) / PARTS;
        for (const r of [bend.insideRadius, bend.outsideRadius])
          for (const [a, b] of [bend.low, bend.high]) {
            const p = inSpace(bend, [a + ((b - a) * i) / PARTS, r * Math.cos(phi), r * Math.sin(phi)]);
            p.forEach((v, k) => {
              seen.min[k] = Math.min(seen.min[k] as number, v);
              seen.max[k] = Math.max(seen.max[k] as number, v);
            });
          }
      }
      for (const k of [0, 1, 2] as const) {
        expect(min[k]).toBeLessThanOrEqual((seen.min[k] as number) + 1e-9);
        expect(max[k]).toBeGreaterThanOrEqual((seen.max[k] as number) - 1e-9);
        expect((seen.min[k] as number) - min[k]).toBeLessThan(1e-3);
        expect(max[k] - (seen.max[k] as number)).toBeLessThan(1e-3);
      }
    }),
    { numRuns: 80 },
  );
});

/** How deep a solid of a bend's own frame reaches into it, a wedge of its turn at a time. */
function depthIn(bend: FormedBend, corners: readonly Vec3[]): number {
  const middle = bend.sweep / 2;
  const wedges =
    bend.sweep > Math.PI * 0.95
      ? [[0, middle] as const, [middle, bend.sweep] as const]
      : [[0, bend.sweep] as const];
  return Math.max(0, ...wedges.map(([from, to]) => wedgeDepth(bend, corners, from, to)));
}

function wedgeDepth(bend: FormedBend, corners: readonly Vec3[], from: number, to: number): number {
  const planes: readonly (readonly [Vec3, number])[] = [
    [[1, 0, 0], Math.max(...bend.low)],
    [[-1, 0, 0], -Math.min(...bend.high)],
    [[0, -Math.sin(from), Math.cos(from)], 0],
    [[0, Math.sin(to), -Math.cos(to)], 0],
  ];
  const left = planes.reduce(
    (solid, [n, c]) => solid.trimByPlane([...n] as [number, number, number], c),
    library.Manifold.hull(corners.map((p) => [...p] as [number, number, number])),
  );
  if (left.isEmpty()) return 0;
  const { vertProperties, triVerts, numProp } = left.getMesh();
  const points = Array.from(
    { length: vertProperties.length / numProp },
    (_, i) => [0, 1, 2].map((k) => vertProperties[i * numProp + k]) as unknown as Vec3,
  );
  const flat = points.map(([, y, z]): Vec3 => [0, y, z]);
  const far = Math.max(...flat.map(size));
  let near = Infinity;
  for (let i = 0; i < triVerts.length; i += 3) {
    const three = [0, 1, 2].map((k) => flat[triVerts[i + k] as number]) as [Vec3, Vec3, Vec3];
    near = Math.min(near, axisTo(three));
  }
  const past = planes.map(([n, c]) => Math.max(...points.map((p) => dot(n, p) - c)));
  return Math.min(far - bend.insideRadius, bend.outsideRadius - near, ...past);
}

/** Distance of the axis from a triangle seen along it. */
function axisTo(three: readonly [Vec3, Vec3, Vec3]): number {
  const sides = three.map((a, i) => [a, three[(i + 1) % 3] as Vec3] as const);
  const turn = sides.map(([a, b]) => a[1] * b[2] - a[2] * b[1]);
  if (turn.every((t) => t > 0) || turn.every((t) => t < 0)) return 0;
  return Math.min(
    ...sides.map(([a, b]) => {
      const u = minus(b, a);
      const t = dot(u, u) === 0 ? 0 : Math.max(0, Math.min(1, -dot(a, u) / dot(u, u)));
      return size([0, a[1] + t * u[1], a[2] + t * u[2]]);
    }),
  );
}

test('a block reaches as deep into a bend as manifold-3d leaves of it between the ends and within the turn', () => {
  const blocks = fc.record({
    turns,
    at: fc.tuple(
      fc.integer({ min: -8, max: 28 }),
      fc.integer({ min: -14, max: 14 }),
      fc.integer({ min: -14, max: 14 }),
    ),
    by: fc.tuple(
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 1, max: 12 }),
    ),
  });
  let deep = 0;
  fc.assert(
    fc.property(bends(0), blocks, (bend, { turns, at, by: [l, w, h] }) => {
      const ring = (z: number): Vec3[] =>
        (
          [
            [0, 0, z],
            [l, 0, z],
            [l, w, z],
            [0, w, z],
          ] as const
        ).map((p) => turned(p, turns).map((v, k) => v + at[k as 0 | 1 | 2]) as unknown as Vec3);
      const [low, high] = [ring(0), ring(h)];
      const solid = prismBetween(
        low.map((p) => inSpace(bend, p)),
        high.map((p) => inSpace(bend, p)),
      );
      const asked = depthIn(bend, [...low, ...high]);
      const found = shellDepth(solid, bend);
      expect(Math.abs(found - asked)).toBeLessThan(1e-4);
      if (found > 0.1) deep += 1;
    }),
    { numRuns: 150 },
  );
  expect(deep).toBeGreaterThan(0);
});

test('strips of a bend: corners on both its radii, from end to end, side by side, none turned by more than 7.5°', () => {
  fc.assert(
    fc.property(bends(6), (bend) => {
      const strips = shellStrips(bend);
      expect(strips.length).toBeGreaterThanOrEqual((bend.sweep / Math.PI) * 24 - 1e-9);
      expect(strips.length).toBeLessThan(Math.max(3, (bend.sweep / Math.PI) * 24 + 1 + 1e-6));
      const corners: Vec3[] = [];
      for (const { corners: list, normals } of strips) {
        for (let i = 0; i < list.length; i += 3) corners.push(list.slice(i, i + 3) as unknown as Vec3);
        const middle = [0, 1, 2].map(
          (k) => list.reduce((sum, v, i) => (i % 3 === k ? sum + v : sum), 0) / 8,
        ) as unknown as Vec3;
        // the wall of the outside faces away from the axis, or the strip is inside out
        const out = minus(middle, inSpace(bend, [10, 0, 0]));
        expect(normals.length).toBe(18);
        expect(
          dot(normals.slice(6, 9) as unknown as Vec3, out) *
            dot(normals.slice(12, 15) as unknown as Vec3, out),
        ).toBeLessThan(0);
      }
      const asked: Vec3[] = [];
      for (let i = 0; i <= strips.length; i++) {
        const phi = (bend.sweep * i) / strips.length;
        for (const r of [Math.max(bend.insideRadius, 1e-6), bend.outsideRadius])
          for (const [a, b] of [bend.low, bend.high])
            asked.push(
              inSpace(bend, [a + ((b - a) * i) / strips.length, r * Math.cos(phi), r * Math.sin(phi)]),
            );
      }
      const held = (list: readonly Vec3[], p: Vec3) => list.some((q) => size(minus(p, q)) < 1e-9);
      expect(corners.every((p) => held(asked, p)) && asked.every((p) => held(corners, p))).toBe(true);
    }),
    { numRuns: 40 },
  );
});

test('lumps that reach a little into each other say how far: panels, bends, and one of each', () => {
  const pose = { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] } as const;
  const square = (id: string, z: number) => ({
    id,
    pose: { ...pose, origin: [0, 0, z] as const },
    shape: [
      [0, 0],
      [20, 0],
      [20, 20],
      [0, 20],
    ] as const,
    edges: [],
    holes: [],
    cutouts: [],
  });
  const ring = (y: number): FormedBend => ({
    id: `ring ${y}`,
    parent: 'base',
    frame: { ...pose, origin: [0, y, 1 - 0.25 - 4] },
    sweep: Math.PI,
    insideRadius: 3,
    outsideRadius: 4,
    low: [0, 0],
    high: [20, 20],
  });
  // the rings turn over z: the first is highest at z = 0.75, a quarter over the lower panel's marked face less a half
  const lumps = lumpsOf({
    thickness: 0.5,
    panels: [square('low', 0), square('high', 0.3), square('far', 9)],
    bends: [ring(10), ring(17.5)],
  });
  const [low, high, far, one, other] = lumps as [never, never, never, never, never];
  expect(lumpDepth(low, high)).toBeCloseTo(0.2, 12);
  expect(lumpDepth(low, far)).toBe(0);
  expect(lumpDepth(far, one)).toBe(0);
  expect(lumpDepth(one, high)).toBeCloseTo(0.45, 9);
  expect(lumpDepth(high, one)).toBeCloseTo(0.45, 9);
  expect(lumpDepth(one, other)).toBeGreaterThan(0.3);
  expect(lumpDepth(one, other)).toBeLessThan(0.6);
});
