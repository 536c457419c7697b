import earcut from 'earcut';
import { cross, type Point, sub } from '../plane/point.js';
import type { FormedPanel } from './formed.js';
import { cross3, dot3, length3, place3, scale3, sub3, unit3, type Vec3 } from './space.js';

/** A convex solid with flat faces: its corners, face normals and edge directions. */
export interface Prism {
  readonly corners: readonly Vec3[];
  readonly normals: readonly Vec3[];
  readonly edges: readonly Vec3[];
  readonly min: Vec3;
  readonly max: Vec3;
}

/** A panel as convex prisms between its two faces: one when its shape is convex, triangles otherwise. */
export function convexPrisms(panel: FormedPanel, thickness: number): readonly Prism[] {
  return convexPieces(panel.shape).map((shape) => prism(panel, shape, thickness));
}

/** A polygon less its holes in convex pieces: itself when convex and whole, triangles otherwise. */
export function convexPieces(
  shape: readonly Point[],
  holes: readonly (readonly Point[])[] = [],
): readonly (readonly Point[])[] {
  if (holes.length === 0 && isConvex(shape)) return [shape];
  const points = [...shape, ...holes.flat()];
  let next = shape.length;
  const starts = holes.map((hole) => {
    next += hole.length;
    return next - hole.length;
  });
  const index = earcut(points.flat(), starts);
  return Array.from({ length: index.length / 3 }, (_, k) =>
    [0, 1, 2].map((j) => points[index[3 * k + j] as number] as Point),
  );
}

function isConvex(shape: readonly Point[]): boolean {
  const at = (i: number) => shape[i % shape.length] as Point;
  return shape.every((_, i) => cross(sub(at(i + 1), at(i)), sub(at(i + 2), at(i + 1))) >= -1e-9);
}

function prism({ pose }: FormedPanel, shape: readonly Point[], thickness: number): Prism {
  const ring = (z: number) => shape.map(([x, y]) => place3(pose, [x, y, z]));
  const low = ring(0);
  const corners = [...low, ...ring(thickness)];
  const sides = low.map((p, i) => unit3(sub3(low[(i + 1) % low.length] as Vec3, p)));
  const pick = (f: (...v: number[]) => number): Vec3 =>
    [0, 1, 2].map((k) => f(...corners.map((c) => c[k] as number))) as unknown as Vec3;
  return {
    corners,
    normals: [pose.z, ...sides.map((s) => cross3(s, pose.z))],
    edges: [pose.z, ...sides],
    min: pick(Math.min),
    max: pick(Math.max),
  };
}

/** How far two convex solids reach into each other along the axis that parts them soonest, mm; 0 when apart. */
export function overlapDepth(a: Prism, b: Prism): number {
  if (
    [0, 1, 2].some(
      (k) => (a.min[k] as number) >= (b.max[k] as number) || (b.min[k] as number) >= (a.max[k] as number),
    )
  )
    return 0;
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
  for (const u of a.edges)
    for (const v of b.edges) {
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
