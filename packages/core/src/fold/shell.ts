import { clipRing, convexHull } from '../plane/convex.js';
import type { Point } from '../plane/point.js';
import type { FormedBend } from './formed.js';
import { type Prism, prismBetween } from './prism.js';
import { add3, dot3, place3, scale3, sub3, type Vec3 } from './space.js';

/**
 * How deep a convex solid reaches into the bent material of a bend, mm; 0 when clear. Exact: seen along the bend's
 * axis, the solid between the bend's ends and within its turn is a convex polygon, whose nearest and farthest
 * distance from the axis tell whether it lies inside the bend, outside it, or in it. Slanted ends count as far as
 * their shorter side.
 */
export function shellDepth(solid: Prism, bend: FormedBend): number {
  if (beside(solid, bend)) return 0;
  const turns = bend.sweep > Math.PI * 0.95 ? [0, bend.sweep / 2, bend.sweep] : [0, bend.sweep];
  return turns
    .slice(1)
    .reduce((worst, to, i) => Math.max(worst, wedgeDepth(solid, bend, turns[i] as number, to)), 0);
}

/** True when all of the solid lies past an end of the bend, or further from the axis than its outside. */
function beside(solid: Prism, bend: FormedBend): boolean {
  const { frame, outsideRadius } = bend;
  let [minX, maxX, minY, maxY, minZ, maxZ] = [Infinity, -Infinity, Infinity, -Infinity, Infinity, -Infinity];
  for (const c of solid.corners) {
    const d = sub3(c, frame.origin);
    const [x, y, z] = [dot3(d, frame.x), dot3(d, frame.y), dot3(d, frame.z)];
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
    if (z < minZ) minZ = z;
    if (z > maxZ) maxZ = z;
  }
  const [low, high] = [Math.max(...bend.low), Math.min(...bend.high)];
  return (
    maxX <= low ||
    minX >= high ||
    minY >= outsideRadius ||
    maxY <= -outsideRadius ||
    minZ >= outsideRadius ||
    maxZ <= -outsideRadius
  );
}

function wedgeDepth(solid: Prism, bend: FormedBend, from: number, to: number): number {
  const planes = wedgePlanes(bend, from, to);
  const faces = solid.faces.map((face) =>
    planes.reduce(
      clipFace,
      face.map((p) => local(bend, p)),
    ),
  );
  const seen = faces.flat().map((p): Point => [p[1], p[2]]);
  if (seen.length === 0) return 0;
  const far = Math.max(...seen.map(([y, z]) => Math.sqrt(y * y + z * z)));
  const near = nearest(faces);
  const { insideRadius, outsideRadius } = bend;
  // past each end and tangent plane too: what only touches one is not in the bend
  const past = planes.map(([n, c]) => Math.max(...faces.flat().map((p) => dot3(n, p) - c)));
  return Math.max(0, Math.min(far - insideRadius, outsideRadius - near, ...past));
}

/** In the bend's frame: x along the axis, parent's tangent line at y = r, z = 0. */
function local({ frame }: FormedBend, p: Vec3): Vec3 {
  const d = sub3(p, frame.origin);
  return [dot3(d, frame.x), dot3(d, frame.y), dot3(d, frame.z)];
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

/** Least distance from the axis of what the faces bound, seen along the axis; 0 when the axis runs through it. */
function nearest(faces: readonly (readonly Vec3[])[]): number {
  const hull = convexHull(faces.flat().map((p): Point => [p[1], p[2]]));
  const sides = hull.map((a, i) => [a, hull[(i + 1) % hull.length] as Point] as const);
  const inside =
    hull.length > 2 && sides.every(([a, b]) => (b[0] - a[0]) * -a[1] - (b[1] - a[1]) * -a[0] >= 0);
  return inside ? 0 : Math.min(...sides.map(([a, b]) => originTo(a, b)));
}

function originTo([ax, ay]: Point, [bx, by]: Point): number {
  const [dx, dy] = [bx - ax, by - ay];
  const l2 = dx * dx + dy * dy;
  const t = l2 === 0 ? 0 : Math.max(0, Math.min(1, -(ax * dx + ay * dy) / l2));
  return Math.sqrt((ax + dx * t) ** 2 + (ay + dy * t) ** 2);
}

/** The bent material as flat-faced strips for measuring distances: within R·(1 − cos(step/2)) of the true ring. */
export function shellStrips(bend: FormedBend): readonly Prism[] {
  const count = Math.max(2, Math.ceil(bend.sweep / STRIP));
  const at = (phi: number, r: number, end: 'low' | 'high'): Vec3 => {
    const [a, b] = end === 'low' ? bend.low : bend.high;
    return place3(bend.frame, [a + ((b - a) * phi) / bend.sweep, r * Math.cos(phi), r * Math.sin(phi)]);
  };
  return Array.from({ length: count }, (_, i) => {
    const [from, to] = [(bend.sweep * i) / count, (bend.sweep * (i + 1)) / count];
    const ring = (end: 'low' | 'high') => [
      at(from, bend.outsideRadius, end),
      at(to, bend.outsideRadius, end),
      at(to, Math.max(bend.insideRadius, 1e-6), end),
      at(from, Math.max(bend.insideRadius, 1e-6), end),
    ];
    return prismBetween(ring('low'), ring('high'));
  });
}

const STRIP = Math.PI / 24; // turn of one strip: 0.2 % of the radius
