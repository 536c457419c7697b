import { distanceToSegment } from './inside.js';
import { type Arc, arcOf, isArc, type Segment } from './loop.js';
import { cross, distance, type Point, SAME, sub } from './point.js';

const ONE_TOUCH = 5e-5; // mm; rounding parts the two roots of a tangent by up to this

/**
 * Points where two segments cross or touch, exact for lines and arcs.
 * Segments that run over the same curve give the ends of the shared run.
 */
export function meetings(a: Segment, b: Segment): readonly Point[] {
  const candidates = [...crossings(a, b), a.from, a.to, b.from, b.to];
  const on = candidates.filter((p) => distanceToSegment(p, a) < SAME && distanceToSegment(p, b) < SAME);
  return on.filter((p, i) => on.findIndex((q) => distance(p, q) < ONE_TOUCH) === i);
}

function crossings(a: Segment, b: Segment): readonly Point[] {
  if (!isArc(a) && !isArc(b)) return lineLine(a, b);
  if (!isArc(a)) return lineCircle(a, arcOf(b));
  if (!isArc(b)) return lineCircle(b, arcOf(a));
  return circleCircle(arcOf(a), arcOf(b));
}

function lineLine(a: Segment, b: Segment): readonly Point[] {
  const [u, v] = [sub(a.to, a.from), sub(b.to, b.from)];
  const d = cross(u, v);
  if (Math.abs(d) < 1e-14) return [];
  const t = cross(sub(b.from, a.from), v) / d;
  return [[a.from[0] + u[0] * t, a.from[1] + u[1] * t]];
}

/** Where the endless line through a segment meets a circle. */
export function lineCircle(s: Segment, { centre, radius }: Pick<Arc, 'centre' | 'radius'>): readonly Point[] {
  const u = sub(s.to, s.from);
  const l = Math.hypot(u[0], u[1]);
  if (l === 0) return [];
  const d: Point = [u[0] / l, u[1] / l];
  const along = (centre[0] - s.from[0]) * d[0] + (centre[1] - s.from[1]) * d[1];
  const foot: Point = [s.from[0] + d[0] * along, s.from[1] + d[1] * along];
  const h2 = radius * radius - distance(foot, centre) ** 2;
  if (h2 < -SAME * radius) return [];
  const h = Math.sqrt(Math.max(0, h2));
  return [
    [foot[0] - d[0] * h, foot[1] - d[1] * h],
    [foot[0] + d[0] * h, foot[1] + d[1] * h],
  ];
}

function circleCircle(a: Arc, b: Arc): readonly Point[] {
  const d = distance(a.centre, b.centre);
  if (d < SAME || d > a.radius + b.radius + SAME || d < Math.abs(a.radius - b.radius) - SAME) return [];
  const along = (d * d + a.radius * a.radius - b.radius * b.radius) / (2 * d);
  const h = Math.sqrt(Math.max(0, a.radius * a.radius - along * along));
  const u: Point = [(b.centre[0] - a.centre[0]) / d, (b.centre[1] - a.centre[1]) / d];
  const m: Point = [a.centre[0] + u[0] * along, a.centre[1] + u[1] * along];
  return [
    [m[0] - u[1] * h, m[1] + u[0] * h],
    [m[0] + u[1] * h, m[1] - u[0] * h],
  ];
}
