import { arcOf, isArc, type Loop, type Segment, segments, type Vertex } from './loop.js';
import { distance, type Point, sub } from './point.js';

/** Exact distance from a point to a line or arc segment, mm. */
export function distanceToSegment(p: Point, s: Segment): number {
  if (isArc(s)) {
    const { centre, radius, start, sweep } = arcOf(s);
    const full = 2 * Math.PI;
    const turn = (((Math.atan2(p[1] - centre[1], p[0] - centre[0]) - start) % full) + full) % full;
    const on = (sweep > 0 ? turn : full - turn) <= Math.abs(sweep) || turn === 0;
    if (on) return Math.abs(distance(p, centre) - radius);
    return Math.min(distance(p, s.from), distance(p, s.to));
  }
  const d = sub(s.to, s.from);
  const l2 = d[0] * d[0] + d[1] * d[1];
  const t =
    l2 === 0 ? 0 : Math.max(0, Math.min(1, ((p[0] - s.from[0]) * d[0] + (p[1] - s.from[1]) * d[1]) / l2));
  return distance(p, [s.from[0] + d[0] * t, s.from[1] + d[1] * t]);
}

/** Exact distance from a point to a loop's line, mm. */
export function distanceToLoop(p: Point, loop: Loop): number {
  let least = Infinity;
  for (const s of segments(loop)) least = Math.min(least, distanceToSegment(p, s));
  return least;
}

/**
 * True when `p` lies strictly inside the loop. Exact for arcs: the polygon of chords is corrected by the
 * circular segments, with the same test for the side of a chord. Points on the line itself may go either way;
 * ask `distanceToLoop` first.
 */
export function contains(loop: Loop, p: Point): boolean {
  let odd = false;
  let last = loop.at(-1);
  for (const next of loop) {
    const { at, bulge } = last as Vertex;
    const between = at[1] > p[1] !== next.at[1] > p[1];
    if (between && westOf(at, next.at, p)) odd = !odd;
    if (isArc({ bulge }) && inSegmentOfCircle({ from: at, to: next.at, bulge }, p)) odd = !odd;
    last = next;
  }
  return odd;
}

/** True when the endless line through a chord passes to the right of `p` at its height. */
function westOf(a: Point, b: Point, p: Point): boolean {
  return p[0] < ((b[0] - a[0]) * (p[1] - a[1])) / (b[1] - a[1]) + a[0];
}

/** Between an arc and its chord. */
function inSegmentOfCircle(s: Segment, p: Point): boolean {
  const { centre, radius } = arcOf(s);
  if (distance(p, centre) >= radius) return false;
  const { from: a, to: b } = s;
  // level with a level chord counts as above it, as in the crossing test
  const left = a[1] === b[1] ? p[1] >= a[1] === b[0] > a[0] : westOf(a, b, p) === b[1] > a[1];
  return s.bulge > 0 ? !left : left; // a counter-clockwise arc bulges to the right of its chord
}
