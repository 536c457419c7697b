import { convexPieces } from '../../plane/convex.js';
import type { Point } from '../../plane/point.js';
import { place3, type Vec3 } from '../draft/space.js';
import type { Box3, FormedPanel } from './formed.js';

/** Vectors in one list, x, y and z of each in turn: the loops over pairs of solids make no objects. */
export type Vectors = readonly number[];

/** A convex solid between two rings of as many corners. mm */
export interface Prism extends Box3 {
  /** Corners in a ring. */
  readonly sides: number;
  /** Of the low ring, then of the high one, both counter-clockwise seen from the high ring's side. */
  readonly corners: Vectors;
  /** Outward, of length 1, in the order of the faces: low ring, high ring, the wall after each corner. */
  readonly normals: Vectors;
  /** Directions its edges run in, of length 1, none twice. */
  readonly directions: Vectors;
}

/** A panel as convex prisms between its two faces: one when its shape is convex, triangles otherwise. Holes stay filled. */
export function panelPrisms(panel: FormedPanel, thickness: number): readonly Prism[] {
  return convexPieces(panel.shape).map((shape) => {
    const ring = (z: number) => shape.map(([x, y]: Point) => place3(panel.pose, [x, y, z]));
    return prismBetween(ring(0), ring(panel.thickness ?? thickness));
  });
}

/** The solid between two parallel convex rings of as many corners, counter-clockwise seen from the second one's side. */
export function prismBetween(low: readonly Vec3[], high: readonly Vec3[]): Prism {
  const sides = low.length;
  const corners: number[] = [];
  for (const c of low) corners.push(c[0], c[1], c[2]);
  for (const c of high) corners.push(c[0], c[1], c[2]);
  const normals: number[] = [];
  for (let face = 0; face < sides + 2; face++) pushNormal(normals, corners, sides, face);
  const directions: number[] = [];
  for (let i = 0; i < sides; i++) pushDirection(directions, corners, i, (i + 1) % sides);
  pushDirection(directions, corners, 0, sides);
  const { min, max } = boxOf(corners);
  return { sides, corners, normals, directions, min, max };
}

/** Corners of a face. */
export const faceSize = (sides: number, face: number): number => (face < 2 ? sides : 4);

/** Index of corner `k` of a face, counter-clockwise seen from outside. */
export function faceCorner(sides: number, face: number, k: number): number {
  if (face === 0) return sides - 1 - k;
  if (face === 1) return sides + k;
  const i = k === 0 || k === 3 ? face - 2 : (face - 1) % sides;
  return k < 2 ? i : sides + i;
}

function pushNormal(normals: number[], corners: Vectors, sides: number, face: number): void {
  const a = 3 * faceCorner(sides, face, 0);
  const b = 3 * faceCorner(sides, face, 1);
  const c = 3 * faceCorner(sides, face, 2);
  const ux = along(corners, a, b, 0);
  const uy = along(corners, a, b, 1);
  const uz = along(corners, a, b, 2);
  const vx = along(corners, b, c, 0);
  const vy = along(corners, b, c, 1);
  const vz = along(corners, b, c, 2);
  pushUnit(normals, uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
}

/** The direction from one corner to another, unless one parallel to it is there. */
function pushDirection(directions: number[], corners: Vectors, from: number, to: number): void {
  const n = directions.length;
  const x = along(corners, 3 * from, 3 * to, 0);
  const y = along(corners, 3 * from, 3 * to, 1);
  const z = along(corners, 3 * from, 3 * to, 2);
  const least = PARALLEL * PARALLEL * (x * x + y * y + z * z);
  for (let k = 0; k < n; k += 3) {
    const u = directions[k] as number;
    const v = directions[k + 1] as number;
    const w = directions[k + 2] as number;
    if ((y * w - z * v) ** 2 + (z * u - x * w) ** 2 + (x * v - y * u) ** 2 <= least) return;
  }
  pushUnit(directions, x, y, z);
}

const PARALLEL = 1e-9;

const along = (list: Vectors, from: number, to: number, axis: number): number =>
  (list[to + axis] as number) - (list[from + axis] as number);

function pushUnit(list: number[], x: number, y: number, z: number): void {
  const scale = 1 / Math.sqrt(x * x + y * y + z * z);
  list.push(x * scale, y * scale, z * scale);
}

function boxOf(corners: Vectors): Box3 {
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < corners.length; i++) {
    const axis = (i % 3) as 0 | 1 | 2;
    const value = corners[i] as number;
    if (value < min[axis]) min[axis] = value;
    if (value > max[axis]) max[axis] = value;
  }
  return { min, max };
}

/** The least a solid reaches along an axis. */
export function leastAlong({ corners }: Prism, x: number, y: number, z: number): number {
  let least = Infinity;
  for (let i = 0; i < corners.length; i += 3) {
    const d = (corners[i] as number) * x + (corners[i + 1] as number) * y + (corners[i + 2] as number) * z;
    if (d < least) least = d;
  }
  return least;
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
