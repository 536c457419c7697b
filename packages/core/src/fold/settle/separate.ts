import type { HalfPlane } from '../draft/outline.js';
import {
  add3,
  cross3,
  dot3,
  length3,
  type Pose,
  place3,
  scale3,
  sub3,
  turn3,
  unit3,
  type Vec3,
} from '../draft/space.js';

/** A flange at a corner: where it stands, and from where its root runs which way. */
export interface Meeting {
  readonly pose: Pose;
  /** Root corner on the outside mould plane, in the flange's frame. */
  readonly corner: Vec3;
  /** Direction of the root away from the corner, in the flange's frame. */
  readonly along: Vec3;
  /** Bent through, degrees, without sign. */
  readonly angle: number;
}

/** A half space: keep the points with n·p ≥ c. */
export interface HalfSpace {
  readonly n: Vec3;
  readonly c: number;
}

const FOLDED_BACK = 150; // degrees

/** From 150° a flange lies over its panel: it does not meet an upright neighbour, but ends beside it. */
export const isFoldedBack = ({ angle }: Pick<Meeting, 'angle'>): boolean => angle > FOLDED_BACK;
const PARALLEL = 1e-9;
const IN_PLANE = 1e-6;

/**
 * The pair of half spaces that keep two flanges at a corner `gap` apart along the plane bisecting them: the mitre
 * between flanges that share a plane, else the plane through the line where their outside planes meet.
 * Null when they lie in parallel planes apart, or when only one of them is folded back over its panel: then they
 * do not meet, and only the style's own cuts apply.
 */
export function bisect(a: Meeting, b: Meeting, gap: number): readonly [HalfSpace, HalfSpace] | null {
  if (isFoldedBack(a) !== isFoldedBack(b)) return null;
  const [na, nb] = [a.pose.z, b.pose.z];
  const [pa, pb] = [place3(a.pose, a.corner), place3(b.pose, b.corner)];
  const [ua, ub] = [turn3(a.pose, a.along), turn3(b.pose, b.along)];
  const line = cross3(na, nb);
  if (length3(line) < PARALLEL) {
    if (!sharesPlane(a, b)) return null;
    const through = rootCrossing(pa, ua, pb, ub);
    return through === null ? null : pair(ua, ub, through, gap);
  }
  const l = unit3(line);
  const across = (u: Vec3) => sub3(u, scale3(l, dot3(u, l)));
  const [wa, wb] = [across(ua), across(ub)];
  if (length3(wa) < PARALLEL || length3(wb) < PARALLEL) return null;
  return pair(unit3(wa), unit3(wb), planesMeet(pa, na, pb, nb), gap);
}

/** True when the outside faces of both lie in one plane. */
export function sharesPlane(a: Meeting, b: Meeting): boolean {
  const apart = sub3(place3(b.pose, b.corner), place3(a.pose, a.corner));
  return length3(cross3(a.pose.z, b.pose.z)) < PARALLEL && Math.abs(dot3(apart, a.pose.z)) < IN_PLANE;
}

function pair(ua: Vec3, ub: Vec3, through: Vec3, gap: number): readonly [HalfSpace, HalfSpace] | null {
  const d = sub3(ua, ub);
  if (length3(d) < PARALLEL) return null;
  const n = unit3(d);
  const at = dot3(n, through);
  return [
    { n, c: at + gap / 2 },
    { n: scale3(n, -1), c: -at + gap / 2 },
  ];
}

/** Where two root lines in one plane cross; null when they run parallel. */
function rootCrossing(pa: Vec3, ua: Vec3, pb: Vec3, ub: Vec3): Vec3 | null {
  const n = cross3(ua, ub);
  const n2 = dot3(n, n);
  if (n2 < PARALLEL) return null;
  return add3(pa, scale3(ua, dot3(cross3(sub3(pb, pa), ub), n) / n2));
}

/** A point on both planes, nearest the first corner along their common normal plane. */
function planesMeet(pa: Vec3, na: Vec3, pb: Vec3, nb: Vec3): Vec3 {
  const c = dot3(na, nb);
  const db = dot3(sub3(pb, pa), nb);
  // pa + s·(nb − c·na): stays on plane a, reaches plane b
  return add3(pa, scale3(sub3(nb, scale3(na, c)), db / (1 - c * c)));
}

/** What a half space leaves of a panel of this thickness, square edges included: the stricter of both faces. */
export function onPanel(half: HalfSpace, pose: Pose, thickness: number): HalfPlane {
  const { n, c } = half;
  return {
    x: dot3(n, pose.x),
    y: dot3(n, pose.y),
    c: c - dot3(n, pose.origin) - Math.min(0, dot3(n, pose.z) * thickness),
  };
}
