import { convexPieces } from '../plane/convex.js';
import type { Point } from '../plane/point.js';
import type { Box3, FormedPanel } from './formed.js';
import { cross3, dot3, length3, place3, scale3, sub3, unit3, type Vec3 } from './space.js';

/** A convex solid with flat faces, outward normals, and the directions its edges run in. mm */
export interface Prism extends Box3 {
  readonly corners: readonly Vec3[];
  readonly faces: readonly (readonly Vec3[])[];
  readonly edges: readonly (readonly [Vec3, Vec3])[];
  readonly normals: readonly Vec3[];
  readonly directions: readonly Vec3[];
}

/** A panel as convex prisms between its two faces: one when its shape is convex, triangles otherwise. Holes stay filled. */
export function panelPrisms(panel: FormedPanel, thickness: number): readonly Prism[] {
  return convexPieces(panel.shape).map((shape) => {
    const ring = (z: number) => shape.map(([x, y]: Point) => place3(panel.pose, [x, y, z]));
    return prismBetween(ring(0), ring(thickness));
  });
}

/** The solid between two parallel convex rings of as many corners, counter-clockwise seen from the second one's side. */
export function prismBetween(low: readonly Vec3[], high: readonly Vec3[]): Prism {
  const n = low.length;
  const at = (ring: readonly Vec3[], i: number) => ring[i % n] as Vec3;
  const walls = low.map((p, i) => [p, at(low, i + 1), at(high, i + 1), at(high, i)] as const);
  const faces = [low.toReversed(), high, ...walls];
  const edges = low.flatMap((p, i): readonly (readonly [Vec3, Vec3])[] => [
    [p, at(low, i + 1)],
    [at(high, i), at(high, i + 1)],
    [p, at(high, i)],
  ]);
  const corners = [...low, ...high];
  const least = (k: 0 | 1 | 2) => corners.reduce((m, c) => Math.min(m, c[k]), Infinity);
  const most = (k: 0 | 1 | 2) => corners.reduce((m, c) => Math.max(m, c[k]), -Infinity);
  return {
    corners,
    faces,
    edges,
    normals: faces.map(normalOf),
    directions: distinct([...low.map((p, i) => sub3(at(low, i + 1), p)), sub3(at(high, 0), at(low, 0))]),
    min: [least(0), least(1), least(2)],
    max: [most(0), most(1), most(2)],
  };
}

function normalOf(face: readonly Vec3[]): Vec3 {
  const [a, b, c] = face as readonly [Vec3, Vec3, Vec3];
  return unit3(cross3(sub3(b, a), sub3(c, b)));
}

/** Directions without those parallel to an earlier one. */
function distinct(vectors: readonly Vec3[]): readonly Vec3[] {
  const found: Vec3[] = [];
  for (const v of vectors.map(unit3)) if (found.every((f) => length3(cross3(f, v)) > 1e-9)) found.push(v);
  return found;
}

/** True when the boxes round two solids stay `margin` apart or more. */
export function boxesApart(a: Box3, b: Box3, margin = 0): boolean {
  return boxDistance(a, b) >= margin;
}

/** Distance between the boxes round two solids, mm; negative where they overlap along every axis. */
export function boxDistance(a: Box3, b: Box3): number {
  const x = Math.max(a.min[0] - b.max[0], b.min[0] - a.max[0]);
  const y = Math.max(a.min[1] - b.max[1], b.min[1] - a.max[1]);
  const z = Math.max(a.min[2] - b.max[2], b.min[2] - a.max[2]);
  const most = Math.max(x, y, z);
  return most <= 0 ? most : Math.sqrt(Math.max(x, 0) ** 2 + Math.max(y, 0) ** 2 + Math.max(z, 0) ** 2);
}

/** How far two convex solids reach into each other along the axis that parts them soonest, mm; 0 when apart. */
export function overlapDepth(a: Prism, b: Prism): number {
  if (boxesApart(a, b)) return 0;
  let depth = Infinity;
  for (const axis of axes(a, b)) {
    const [a0, a1] = span(a, axis);
    const [b0, b1] = span(b, axis);
    depth = Math.min(depth, a1 - b0, b1 - a0);
    if (depth <= 0) return 0;
  }
  return depth;
}

function* axes(a: Prism, b: Prism): Generator<Vec3> {
  yield* a.normals;
  yield* b.normals;
  for (const u of a.directions)
    for (const v of b.directions) {
      const n = cross3(u, v);
      const l = length3(n);
      if (l > 1e-6) yield scale3(n, 1 / l);
    }
}

function span(p: Prism, axis: Vec3): readonly [number, number] {
  let [min, max] = [Infinity, -Infinity];
  for (const c of p.corners) {
    const d = dot3(c, axis);
    if (d < min) min = d;
    if (d > max) max = d;
  }
  return [min, max];
}
