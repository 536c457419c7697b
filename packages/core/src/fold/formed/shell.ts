import { clipRing, convexHull } from '../../plane/convex.js';
import type { Point } from '../../plane/point.js';
import { add3, dot3, type Pose, place3, scale3, sub3, type Vec3 } from '../draft/space.js';
import type { FormedBend } from './formed.js';
import { faceCorner, faceSize, type Prism, prismBetween } from './prism.js';

/**
 * How deep a convex solid reaches into the bent material of a bend, mm; 0 when clear. Exact: seen along the bend's
 * axis, the solid between the bend's ends and within its turn is a convex polygon, whose nearest and farthest
 * distance from the axis tell whether it lies inside the bend, outside it, or in it. Slanted ends count as far as
 * their shorter side.
 */
export function shellDepth(solid: Prism, bend: FormedBend): number {
  const corners = localCorners(solid, bend.frame);
  if (beside(corners, bend)) return 0;
  const seen = { corners, sides: solid.sides };
  const middle = bend.sweep / 2;
  return bend.sweep > Math.PI * 0.95
    ? Math.max(wedgeDepth(seen, bend, 0, middle), wedgeDepth(seen, bend, middle, bend.sweep))
    : wedgeDepth(seen, bend, 0, bend.sweep);
}

/** A solid in the frame of a bend. */
interface Seen {
  readonly corners: readonly Vec3[];
  readonly sides: number;
}

function faceOf({ corners, sides }: Seen, face: number): readonly Vec3[] {
  const ring: Vec3[] = [];
  for (let k = 0; k < faceSize(sides, face); k++) ring.push(corners[faceCorner(sides, face, k)] as Vec3);
  return ring;
}

/** Corners in the bend's frame: x along the axis, parent's tangent line at y = r, z = 0. */
function localCorners({ corners }: Prism, { origin, x, y, z }: Pose): readonly Vec3[] {
  const local: Vec3[] = [];
  for (let i = 0; i < corners.length; i += 3) {
    const u = (corners[i] as number) - origin[0];
    const v = (corners[i + 1] as number) - origin[1];
    const w = (corners[i + 2] as number) - origin[2];
    local.push([
      u * x[0] + v * x[1] + w * x[2],
      u * y[0] + v * y[1] + w * y[2],
      u * z[0] + v * z[1] + w * z[2],
    ]);
  }
  return local;
}

/** True when all of the solid lies past an end of the bend, or further from the axis than its outside. */
function beside(corners: readonly Vec3[], bend: FormedBend): boolean {
  const r = bend.outsideRadius;
  const past = (axis: 0 | 1 | 2, low: number, high: number) =>
    corners.every((c) => c[axis] <= low) || corners.every((c) => c[axis] >= high);
  return past(0, Math.max(...bend.low), Math.min(...bend.high)) || past(1, -r, r) || past(2, -r, r);
}

function wedgeDepth(solid: Seen, bend: FormedBend, from: number, to: number): number {
  const planes = wedgePlanes(bend, from, to);
  if (planes.some(([n, c]) => solid.corners.every((p) => dot3(n, p) <= c))) return 0;
  const points: Vec3[] = [];
  for (let face = 0; face < solid.sides + 2; face++)
    points.push(...planes.reduce(clipFace, faceOf(solid, face)));
  if (points.length === 0) return 0;
  const far = points.reduce((most, p) => Math.max(most, p[1] * p[1] + p[2] * p[2]), 0);
  const { insideRadius, outsideRadius } = bend;
  // past each end and tangent plane too: what only touches one is not in the bend
  const past = planes.map(([n, c]) => points.reduce((most, p) => Math.max(most, dot3(n, p) - c), -Infinity));
  return Math.max(0, Math.min(Math.sqrt(far) - insideRadius, outsideRadius - nearest(points), ...past));
}

/** Half spaces n·p ≥ c that leave the wedge of the turn between the bend's ends. */
type Half = readonly [n: Vec3, c: number];

function wedgePlanes({ low, high }: FormedBend, from: number, to: number): readonly Half[] {
  return [
    [[1, 0, 0], Math.max(...low)],
    [[-1, 0, 0], -Math.min(...high)],
    [[0, -Math.sin(from), Math.cos(from)], 0],
    [[0, Math.sin(to), -Math.cos(to)], 0],
  ];
}

const clipFace = (face: readonly Vec3[], [n, c]: Half): readonly Vec3[] =>
  clipRing(
    face,
    (p) => dot3(n, p) - c,
    (p, q, t) => add3(p, scale3(sub3(q, p), t)),
  );

/** Least distance from the axis of what the points bound, seen along the axis; 0 when the axis runs through it. */
function nearest(points: readonly Vec3[]): number {
  const hull = convexHull(points.map((p): Point => [p[1], p[2]]));
  const next = (i: number) => hull[(i + 1) % hull.length] as Point;
  const left = (a: Point, b: Point) => (b[0] - a[0]) * -a[1] - (b[1] - a[1]) * -a[0] >= 0;
  if (hull.length > 2 && hull.every((a, i) => left(a, next(i)))) return 0;
  return hull.reduce((least, a, i) => Math.min(least, originTo(a, next(i))), Infinity);
}

function originTo(a: Point, b: Point): number {
  const ax = a[0];
  const ay = a[1];
  const dx = b[0] - ax;
  const dy = b[1] - ay;
  const l2 = dx * dx + dy * dy;
  const t = l2 === 0 ? 0 : Math.max(0, Math.min(1, -(ax * dx + ay * dy) / l2));
  return Math.sqrt((ax + dx * t) ** 2 + (ay + dy * t) ** 2);
}

/** The bent material as flat-faced strips for measuring distances: within R·(1 − cos(step/2)) of the true ring. */
export function shellStrips(bend: FormedBend): readonly Prism[] {
  const count = Math.max(2, Math.ceil(bend.sweep / STRIP));
  const strips: Prism[] = [];
  let from = cutAt(bend, 0);
  for (let i = 1; i <= count; i++) {
    const to = cutAt(bend, (bend.sweep * i) / count);
    strips.push(prismBetween([from[0], to[0], to[1], from[1]], [from[2], to[2], to[3], from[3]]));
    from = to;
  }
  return strips;
}

/** Corners of the bent material at a turn: low end outside and inside, high end outside and inside. */
function cutAt({ frame, sweep, low, high, insideRadius, outsideRadius }: FormedBend, phi: number) {
  const inside = Math.max(insideRadius, 1e-6);
  const [cos, sin] = [Math.cos(phi), Math.sin(phi)];
  const lowest = low[0] + ((low[1] - low[0]) * phi) / sweep;
  const highest = high[0] + ((high[1] - high[0]) * phi) / sweep;
  const at = (x: number, r: number): Vec3 => place3(frame, [x, r * cos, r * sin]);
  return [
    at(lowest, outsideRadius),
    at(lowest, inside),
    at(highest, outsideRadius),
    at(highest, inside),
  ] as const;
}

const STRIP = Math.PI / 24; // turn of one strip: 0.2 % of the radius
