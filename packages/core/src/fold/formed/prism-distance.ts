import { boxDistance, faceCorner, faceSize, type Prism, type Vectors } from './prism.js';
import { overlapDepth } from './prism-overlap.js';

/**
 * Distance between two convex solids, mm; where they overlap, how deep, negative. Given up as soon as it is known to be
 * `enough` or more.
 */
export function prismDistanceUpTo(a: Prism, b: Prism, enough: number): number {
  if (boxDistance(a, b) >= enough) return enough;
  const depth = overlapDepth(a, b);
  if (depth > 0) return -depth;
  const edges = edgeDistance(a, b, enough);
  return cornerDistance(b, a, cornerDistance(a, b, edges));
}

/** Least distance of an edge of the one from an edge of the other, `enough` at most. */
function edgeDistance(a: Prism, b: Prism, enough: number): number {
  const most = enough * enough;
  const own = edgesNear(a, b, most);
  const other = edgesNear(b, a, most);
  let best = most;
  for (let i = 0; i < own.length; i += 2)
    for (let k = 0; k < other.length; k += 2) {
      const p = own[i] as number;
      const q = own[i + 1] as number;
      const r = other[k] as number;
      const s = other[k + 1] as number;
      const square = segmentDistance(a.corners, p, q, b.corners, r, s);
      if (square < best) best = square;
    }
  return best < most ? Math.sqrt(best) : enough;
}

/** Ends of the edges of `a` in its list of corners, of those whose box comes nearer to the box of `b`. */
function edgesNear(a: Prism, b: Prism, square: number): readonly number[] {
  const { corners, sides } = a;
  const near: number[] = [];
  const look = (p: number, q: number) => {
    if (spanDistance(corners, p, q, b) < square) near.push(p, q);
  };
  for (let i = 0; i < sides; i++) {
    const low = 3 * i;
    const high = 3 * (sides + i);
    const last = i + 1 === sides;
    look(low, last ? 0 : low + 3);
    look(high, last ? 3 * sides : high + 3);
    look(low, high);
  }
  return near;
}

/** Square of the distance between the box round two corners and the box round a solid. */
function spanDistance(corners: Vectors, p: number, q: number, { min, max }: Prism): number {
  let sum = 0;
  for (let axis = 0; axis < 3; axis++) {
    const u = corners[p + axis] as number;
    const v = corners[q + axis] as number;
    const gap = Math.max(Math.min(u, v) - (max[axis] as number), (min[axis] as number) - Math.max(u, v), 0);
    sum += gap * gap;
  }
  return sum;
}

/**
 * Least distance of a corner of `a` that lies straight over a face of `b`, `enough` at most; the edges cover every
 * other case.
 */
function cornerDistance(a: Prism, b: Prism, enough: number): number {
  let best = enough;
  for (let c = 0; c < a.corners.length; c += 3) {
    if (spanDistance(a.corners, c, c, b) >= best * best) continue;
    for (let face = 0; face < b.sides + 2; face++) {
      const height = Math.abs(heightOver(b, face, a.corners, c));
      if (height < best && isOver(b, face, a.corners, c)) best = height;
    }
  }
  return best;
}

function heightOver(solid: Prism, face: number, points: Vectors, p: number): number {
  const { normals, corners, sides } = solid;
  const at = 3 * faceCorner(sides, face, 0);
  let height = 0;
  for (let axis = 0; axis < 3; axis++)
    height +=
      (normals[3 * face + axis] as number) * ((points[p + axis] as number) - (corners[at + axis] as number));
  return height;
}

/** True when a point lies straight over a face, or under it: on the inner side of every edge. */
function isOver({ sides, corners, normals }: Prism, face: number, points: Vectors, p: number): boolean {
  const size = faceSize(sides, face);
  for (let k = 0; k < size; k++) {
    const a = 3 * faceCorner(sides, face, k);
    const b = 3 * faceCorner(sides, face, k + 1 === size ? 0 : k + 1);
    const ux = (corners[b] as number) - (corners[a] as number);
    const uy = (corners[b + 1] as number) - (corners[a + 1] as number);
    const uz = (corners[b + 2] as number) - (corners[a + 2] as number);
    const vx = (points[p] as number) - (corners[a] as number);
    const vy = (points[p + 1] as number) - (corners[a + 1] as number);
    const vz = (points[p + 2] as number) - (corners[a + 2] as number);
    const side =
      (uy * vz - uz * vy) * (normals[3 * face] as number) +
      (uz * vx - ux * vz) * (normals[3 * face + 1] as number) +
      (ux * vy - uy * vx) * (normals[3 * face + 2] as number);
    if (side < 0) return false;
  }
  return true;
}

/** Square of the least distance between two segments, by the places of their ends in two lists of corners. */
function segmentDistance(a: Vectors, p: number, q: number, b: Vectors, r: number, s: number): number {
  const px = a[p] as number;
  const py = a[p + 1] as number;
  const pz = a[p + 2] as number;
  const rx = b[r] as number;
  const ry = b[r + 1] as number;
  const rz = b[r + 2] as number;
  const ux = (a[q] as number) - px;
  const uy = (a[q + 1] as number) - py;
  const uz = (a[q + 2] as number) - pz;
  const vx = (b[s] as number) - rx;
  const vy = (b[s + 1] as number) - ry;
  const vz = (b[s + 2] as number) - rz;
  const wx = px - rx;
  const wy = py - ry;
  const wz = pz - rz;
  const uu = ux * ux + uy * uy + uz * uz;
  const uv = ux * vx + uy * vy + uz * vz;
  const vv = vx * vx + vy * vy + vz * vz;
  const uw = ux * wx + uy * wy + uz * wz;
  const vw = vx * wx + vy * wy + vz * wz;
  const det = uu * vv - uv * uv;
  let t = det > 1e-12 * uu * vv ? clamp((uv * vw - vv * uw) / det) : 0;
  let k = vv === 0 ? 0 : (uv * t + vw) / vv;
  if (k < 0 || k > 1) {
    k = clamp(k);
    t = uu === 0 ? 0 : clamp((uv * k - uw) / uu);
  }
  const x = px + ux * t - (rx + vx * k);
  const y = py + uy * t - (ry + vy * k);
  const z = pz + uz * t - (rz + vz * k);
  return x * x + y * y + z * z;
}

const clamp = (x: number): number => Math.max(0, Math.min(1, x));
