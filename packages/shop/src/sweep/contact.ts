import type { Point } from '@tinwright/core';
import { type Convex, overlap } from './polygon.js';

const FULL = 2 * Math.PI;
const TOUCH = 1e-9;

/**
 * Angle through which a convex polygon turns about the origin, counter-clockwise, before it first meets a fixed one;
 * radians, `Infinity` when it does not within `limit`, 0 when they meet at the start. Closed form: contact starts
 * with a corner of the one on a side of the other, so every corner's circle is cut with every side.
 */
export function contactAngle(moving: Convex, fixed: Convex, limit: number): number {
  if (apart(moving, fixed) || passes(sectorOf(moving), sectorOf(fixed), limit)) return Infinity;
  if (overlap(moving, fixed) > TOUCH) return 0;
  let first = Infinity;
  for (const v of moving) first = Math.min(first, cornerMeets(v, fixed, 1));
  // a fixed corner sees the moving sides come the other way round
  for (const w of fixed) first = Math.min(first, cornerMeets(w, moving, -1));
  return first <= limit ? first : Infinity;
}

/** True when no turn can bring them together: their distances from the origin do not overlap. */
function apart(a: Convex, b: Convex): boolean {
  const [near, far] = ring(a);
  const [close, wide] = ring(b);
  return near > wide || close > far;
}

/** Directions from the origin in which a shape lies, counter-clockwise, radians; null where it lies all round. */
export type Sector = readonly [from: number, width: number] | null;

/** The sector of a convex polygon. */
export function sectorOf(shape: Convex): Sector {
  const [first] = shape;
  if (first === undefined) return null;
  const [x, y] = first;
  let [least, most] = [0, 0];
  for (const [u, v] of shape) {
    if (u * u + v * v < TOUCH) return null;
    const turn = Math.atan2(x * v - y * u, x * u + y * v);
    least = Math.min(least, turn);
    most = Math.max(most, turn);
  }
  // from the origin, or past it, it may be seen on both sides
  if (most - least >= Math.PI - TOUCH) return null;
  return [Math.atan2(y, x) + least, most - least];
}

/** True when what turns counter-clockwise through an angle never comes into another sector. */
export function passes(moving: Sector, fixed: Sector, turn: number): boolean {
  if (moving === null || fixed === null) return false;
  const ahead = (((fixed[0] - moving[0]) % FULL) + FULL) % FULL;
  return ahead > moving[1] + turn + TOUCH && ahead + fixed[1] < FULL - TOUCH;
}

/** Least and greatest distance of a convex polygon from the origin. */
export function ring(shape: Convex): readonly [number, number] {
  // squared until the end
  let near = Infinity;
  let far = 0;
  let inside = true;
  let p = shape[shape.length - 1] as Point;
  for (const q of shape) {
    const dx = q[0] - p[0];
    const dy = q[1] - p[1];
    const l2 = dx * dx + dy * dy;
    const t = l2 === 0 ? 0 : Math.max(0, Math.min(1, -(p[0] * dx + p[1] * dy) / l2));
    const x = p[0] + dx * t;
    const y = p[1] + dy * t;
    near = Math.min(near, x * x + y * y);
    far = Math.max(far, q[0] * q[0] + q[1] * q[1]);
    if (dx * -p[1] - dy * -p[0] < 0) inside = false;
    p = q;
  }
  return [inside ? 0 : Math.sqrt(near), Math.sqrt(far)];
}

/** Least turn that brings a corner onto a side of a polygon, in the sense given. */
function cornerMeets(corner: Point, shape: Convex, sense: 1 | -1): number {
  const r2 = corner[0] * corner[0] + corner[1] * corner[1];
  const start = Math.atan2(corner[1], corner[0]);
  let first = Infinity;
  let p = shape[shape.length - 1] as Point;
  for (const q of shape) {
    const dx = q[0] - p[0];
    const dy = q[1] - p[1];
    // |p + t·d|² = r²
    const a = dx * dx + dy * dy;
    const b = p[0] * dx + p[1] * dy;
    const det = b * b - a * (p[0] * p[0] + p[1] * p[1] - r2);
    const root = det < 0 || a === 0 ? Number.NaN : Math.sqrt(det);
    for (const t of [(-b - root) / a, (-b + root) / a]) {
      if (!(t >= -TOUCH && t <= 1 + TOUCH)) continue;
      const at = Math.atan2(p[1] + t * dy, p[0] + t * dx);
      const turn = ((((at - start) * sense) % FULL) + FULL) % FULL;
      first = Math.min(first, turn > FULL - TOUCH ? 0 : turn);
    }
    p = q;
  }
  return first;
}
