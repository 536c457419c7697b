// What a picture shows, held against looking: from points along every line a ray goes to the viewer, past all facets.
import type { Point, Vec3 } from '@tinwright/core';
import {
  type Facet,
  ISOMETRIC,
  join,
  partSurface,
  type Surface,
  type View,
  visibleLines,
} from '@tinwright/files/internal';
import { describe, expect, test } from 'vitest';
import type { SurfaceLine } from '../../src/picture/surface.js';
import { marksByPanel } from '../../src/sheets/picture.js';
import { objectOf, plannedCarrier } from '../carrier.js';
import { planned } from '../samples.js';

const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const less = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const mix = (a: Vec3, b: Vec3, t: number): Vec3 => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];

/** A facet as a ray sees it: its plane, and planes through its sides that hold it in; its holes are walls of their own. */
interface Wall {
  readonly normal: Vec3;
  readonly at: number;
  readonly sides: readonly (readonly [Vec3, number])[];
  /** Of one with holes all its sides, since they turn inwards too. */
  readonly rims: readonly (readonly [Vec3, Vec3])[];
}

/** Planes of a facet by its corners, whatever normal it is said to have; none for one without area. */
function wallOf({ corners, holes }: Facet): readonly Wall[] {
  const sum = corners.reduce<Vec3>(
    (s, p, i) => {
      const n = cross(p, corners[(i + 1) % corners.length] as Vec3);
      return [s[0] + n[0], s[1] + n[1], s[2] + n[2]];
    },
    [0, 0, 0],
  );
  const length = Math.hypot(...sum);
  if (length < 1e-9) return [];
  const normal: Vec3 = [sum[0] / length, sum[1] / length, sum[2] / length];
  const sides = corners.flatMap((p, i): readonly (readonly [Vec3, number])[] => {
    const along = less(corners[(i + 1) % corners.length] as Vec3, p);
    const inward = cross(normal, along);
    const l = Math.hypot(...inward);
    if (l < 1e-9) return [];
    const n: Vec3 = [inward[0] / l, inward[1] / l, inward[2] / l];
    return [[n, dot(n, p)]];
  });
  const rims = (holes === undefined ? [] : [corners, ...holes]).flatMap((loop) =>
    loop.map((p, i) => [p, loop[(i + 1) % loop.length] as Vec3] as const),
  );
  return [{ normal, at: dot(normal, corners[0] as Vec3), sides, rims }];
}

/** How far a point of a wall's plane lies inside it, mm; beyond a side, or in a hole, below 0. */
function insideOf({ normal, sides, rims }: Wall, hit: Vec3): number {
  if (rims.length === 0) return Math.min(...sides.map(([n, c]) => dot(n, hit) - c));
  let [turned, near] = [0, Infinity]; // once round for a point inside, once back for the hole round it
  for (const [p, q] of rims) {
    const [u, v, pq] = [less(p, hit), less(q, hit), less(q, p)];
    turned += Math.atan2(dot(normal, cross(u, v)), dot(u, v));
    const t = Math.min(1, Math.max(0, -dot(u, pq) / dot(pq, pq)));
    near = Math.min(near, Math.hypot(...less(mix(p, q, t), hit)));
  }
  return Math.round(Math.abs(turned) / (2 * Math.PI)) % 2 === 1 ? near : -near;
}

type Answer = 'hidden' | 'seen' | 'doubtful';
const CLEAR = 0.02; // mm from a facet's side, and before its plane, where nothing is in doubt
const LIES_ON = 1e-5; // mm

/** Whether anything stands between a point and the viewer. */
function look(walls: readonly Wall[], view: View, p: Vec3): Answer {
  const length = Math.hypot(...view.viewer);
  const ray: Vec3 = [view.viewer[0] / length, view.viewer[1] / length, view.viewer[2] / length];
  let doubtful = false;
  for (const wall of walls) {
    const { normal, at } = wall;
    const slope = dot(normal, ray);
    if (Math.abs(slope) < 1e-6) continue; // edge on: its neighbours hide what it hides
    const t = (at - dot(normal, p)) / slope;
    if (t < LIES_ON) continue; // behind the point, or the point lies on it
    const hit = mix(p, [p[0] + ray[0], p[1] + ray[1], p[2] + ray[2]], t);
    const inside = insideOf(wall, hit);
    if (inside < -CLEAR) continue;
    if (inside > CLEAR && t > CLEAR) return 'hidden';
    doubtful = true;
  }
  return doubtful ? 'doubtful' : 'seen';
}

/** Where a line is drawn, as spans of 0 to 1 of its length on the page. */
function drawn(surface: Surface, view: View, line: SurfaceLine): readonly (readonly [number, number])[] {
  const page = (p: Vec3): Point => [dot(view.across, p), dot(view.up, p)];
  const [a, b] = [page(line.from), page(line.to)];
  const d: Point = [b[0] - a[0], b[1] - a[1]];
  const l2 = d[0] ** 2 + d[1] ** 2;
  const along = (q: Point) => ((q[0] - a[0]) * d[0] + (q[1] - a[1]) * d[1]) / l2;
  return visibleLines({ facets: surface.facets, lines: [line] }, view).map(
    ({ from, to }) => [along(from), along(to)] as const,
  );
}

/** Every stride-th line looked at in three places. */
function held(surface: Surface, view: View, stride: number) {
  const walls = [...surface.facets].flatMap(wallOf);
  const count = { hidden: 0, seen: 0, doubtful: 0 };
  const wrong: string[] = [];
  [...surface.lines]
    .filter((_, i) => i % stride === 0)
    .forEach((line) => {
      const spans = drawn(surface, view, line);
      for (const t of [0.19, 0.52, 0.83]) {
        const p = mix(line.from, line.to, t);
        const answer = look(walls, view, p);
        count[answer]++;
        const shown = spans.some(([s, e]) => s <= t && t <= e);
        if (answer !== 'doubtful' && shown !== (answer === 'seen'))
          wrong.push(`${line.kind} at ${p.map((v) => v.toFixed(3))} is ${answer}, drawn ${shown}`);
      }
    });
  return { count, wrong };
}

const tilted: View = (() => {
  const viewer: Vec3 = [0.41, 0.77, 0.49];
  const across: Vec3 = [-0.77 / Math.hypot(0.41, 0.77), 0.41 / Math.hypot(0.41, 0.77), 0];
  return { viewer, across, up: cross(viewer, across) };
})();
const below: View = { across: [1, 0, 0], up: [0, -0.6, 0.8], viewer: [0, -0.8, -0.6] };

const parts = planned([
  {
    name: 'channel',
    family: 'hemmed-channel',
    length: 200,
    width: 100,
    height: 40,
    hem: { type: 'closed', length: 10 },
    endTabs: { length: 15 },
  },
  {
    name: 'tray',
    family: 'open-box',
    length: 120,
    width: 80,
    height: 40,
    hem: { type: 'open', length: 10 },
  },
  { name: 'handle', family: 'handle', span: 160, width: 32, sideDepth: 12, tabs: { length: 24 } },
  {
    ...{ name: 'pierced', family: 'open-box', length: 120, width: 80, height: 40 },
    cutouts: [
      { panel: 'base', type: 'slot', length: 30, width: 12, from: { west: 40 }, turn: 30 },
      { panel: 'base', type: 'rectangle', length: 20, width: 30, from: { east: 30 } },
      { panel: 'north', type: 'round', diameter: 6, columns: { count: 4, pitch: 20 } },
      { panel: 'east', type: 'keyhole', diameter: 12, width: 6, length: 14 },
    ],
  },
  { name: 'hook', family: 'bent-strip', width: 30, legs: [40, 30, 20], angles: [120, -60] },
]).parts;

describe.each(parts.map((p) => [p.name, p] as const))('%s', (_, { formed }) => {
  test.each([
    ['isometric', ISOMETRIC],
    ['from behind and above', tilted],
    ['from below', below],
  ])('%s: a line is drawn exactly where nothing stands before it', (_name, view) => {
    const { count, wrong } = held(partSurface(formed, view), view, 3);
    expect(wrong).toEqual([]);
    expect(count.seen).toBeGreaterThan(20);
    expect(count.hidden).toBeGreaterThan(20);
  });
});

test.each(['spot-weld', 'blind-rivet'])('a carrier fastened by %s: pieces hide each other', (by) => {
  const object = objectOf(plannedCarrier(by));
  const surface = join(
    object.placed.map(({ part, pose }) => partSurface(part.formed, ISOMETRIC, pose, marksByPanel(part))),
  );
  const { count, wrong } = held(surface, ISOMETRIC, 5);
  expect(wrong).toEqual([]);
  expect(count.hidden).toBeGreaterThan(200);
  expect(count.seen).toBeGreaterThan(100);
});

describe('a square of sheet before a line', () => {
  const front: View = { across: [1, 0, 0], up: [0, 0, 1], viewer: [0, -1, 0] };
  const square: Facet = {
    corners: [
      [10, 0, 10],
      [20, 0, 10],
      [20, 0, 20],
      [10, 0, 20],
    ],
    normal: [0, -1, 0],
  };
  const line = (from: Vec3, to: Vec3): SurfaceLine => ({ from, to, kind: 'edge' });
  const spans = (l: SurfaceLine, facets: readonly Facet[] = [square]) =>
    visibleLines({ facets, lines: [l] }, front).map(({ from, to }) => [from, to]);

  test('a line behind it shows on both sides', () => {
    expect(spans(line([0, 5, 15], [30, 5, 15]))).toEqual([
      [
        [0, 15],
        [10, 15],
      ],
      [
        [20, 15],
        [30, 15],
      ],
    ]);
  });

  test('a line before it, on it, or past it shows whole', () => {
    for (const [y, z] of [
      [-5, 15],
      [0, 15],
      [5, 25],
    ] as const)
      expect(spans(line([0, y, z], [30, y, z]))).toEqual([
        [
          [0, z],
          [30, z],
        ],
      ]);
  });

  test('a line that goes through it hides from there on', () => {
    const found = spans(line([12, -3, 15], [18, 3, 15]));
    expect(found).toHaveLength(1);
    expect(found[0]?.[0]).toEqual([12, 15]);
    expect(found[0]?.[1]?.[0]).toBeCloseTo(15, 2); // a line may lie a thousandth deep
  });

  test('a line altogether behind it does not show', () => {
    expect(spans(line([11, 2, 12], [19, 9, 18]))).toEqual([]);
  });

  test('two squares side by side hide as one', () => {
    const right: Facet = { ...square, corners: square.corners.map(([x, y, z]) => [x + 10, y, z] as const) };
    expect(spans(line([0, 5, 15], [40, 5, 15]), [square, right])).toEqual([
      [
        [0, 15],
        [10, 15],
      ],
      [
        [30, 15],
        [40, 15],
      ],
    ]);
  });

  test('lines that are seen as one are drawn once, whichever way they run; of another kind they stay', () => {
    const edge = line([0, 5, 15], [5, 5, 15]);
    const lines = [edge, line([5, 8, 15], [0, 8, 15]), { ...edge, kind: 'bend' as const }];
    expect(visibleLines({ facets: [square], lines }, front).map((l) => l.kind)).toEqual(['edge', 'bend']);
  });

  test('what kind a line is stays with it', () => {
    const bend = { ...line([0, 5, 15], [30, 5, 15]), kind: 'bend' as const };
    expect(visibleLines({ facets: [square], lines: [bend] }, front).map((l) => l.kind)).toEqual([
      'bend',
      'bend',
    ]);
  });
});

test('a sieve: what is seen through them is asked of each hole alone', () => {
  const grid = (count: number) => ({ count, pitch: 6 });
  const cutouts = [{ panel: 'plate', type: 'round', diameter: 4, columns: grid(20), rows: grid(15) }];
  const [sieve] = planned([{ name: 'sieve', family: 'divider', length: 140, height: 110, cutouts }]).parts;
  const surface = partSurface((sieve as NonNullable<typeof sieve>).formed, ISOMETRIC);
  const pierced = [...surface.facets].filter((f) => f.holes !== undefined);
  expect(pierced).toHaveLength(2); // the two faces, in one piece each
  const seen = visibleLines(surface, ISOMETRIC);
  const rim = ([...surface.lines].length - 4 * 3) / 2; // above as below, with the four corners between
  expect(seen.length).toBeGreaterThan(rim); // all of the upper rims
  expect(seen.length).toBeLessThan(1.9 * rim); // of the lower ones what the sheet does not hide
});
