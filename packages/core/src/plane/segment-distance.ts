import { distanceToSegment } from './inside.js';
import { type Arc, arcOf, isArc, type Segment } from './loop.js';
import { meetings } from './meet.js';
import type { Point } from './point.js';

/**
 * Exact least distance between two segments, lines or arcs, mm; 0 where they meet. It lies between an end of one and
 * the other, or where both run square to the way between them: on the line through a centre.
 */
export function segmentDistance(a: Segment, b: Segment): number {
  if (meetings(a, b).length > 0) return 0;
  const ends = [
    distanceToSegment(a.from, b),
    distanceToSegment(a.to, b),
    distanceToSegment(b.from, a),
    distanceToSegment(b.to, a),
  ];
  return Math.min(...ends, ...squareWays(a, b), ...squareWays(b, a));
}

/** Distances from the points of `a` nearest to and furthest from the centre of `b`, along the line through it. */
function squareWays(a: Segment, b: Segment): readonly number[] {
  if (!isArc(b)) return [];
  const { centre } = arcOf(b);
  const feet = isArc(a) ? onRay(arcOf(a), centre) : [footOf(a, centre)];
  return feet.filter((p) => distanceToSegment(p, a) < ON).map((p) => distanceToSegment(p, b));
}

const ON = 1e-7; // mm

function footOf({ from, to }: Segment, p: Point): Point {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const t = ((p[0] - from[0]) * dx + (p[1] - from[1]) * dy) / (dx * dx + dy * dy);
  return [from[0] + t * dx, from[1] + t * dy];
}

/** Where the line through a point and a circle's centre meets the circle. */
function onRay({ centre, radius }: Pick<Arc, 'centre' | 'radius'>, p: Point): readonly Point[] {
  const [dx, dy] = [p[0] - centre[0], p[1] - centre[1]];
  const l = Math.sqrt(dx * dx + dy * dy);
  if (l === 0) return [];
  const [ux, uy] = [(dx / l) * radius, (dy / l) * radius];
  return [
    [centre[0] + ux, centre[1] + uy],
    [centre[0] - ux, centre[1] - uy],
  ];
}
