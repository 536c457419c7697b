import { isArc, type Point, type Segment } from '@tinwright/core';
import { arcOf, bulgeAround } from '@tinwright/core/internal';

/** The point in the middle of a segment. */
export function middleOf(s: Segment): Point {
  if (!isArc(s)) return [(s.from[0] + s.to[0]) / 2, (s.from[1] + s.to[1]) / 2];
  const { centre, radius, start, sweep } = arcOf(s);
  const angle = start + sweep / 2;
  return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
}

/** How far along a segment a point on it lies: 0 at the start, 1 at the end. */
export function shareAt(s: Segment, [x, y]: Point): number {
  if (!isArc(s)) {
    const [dx, dy] = [s.to[0] - s.from[0], s.to[1] - s.from[1]];
    return ((x - s.from[0]) * dx + (y - s.from[1]) * dy) / (dx * dx + dy * dy);
  }
  const { centre, start, sweep } = arcOf(s);
  const full = 2 * Math.PI;
  const turn = (Math.sign(sweep) * (Math.atan2(y - centre[1], x - centre[0]) - start)) % full;
  const forward = turn < 0 ? turn + full : turn;
  // a hair before the start counts as before it, not as nearly all the way round
  return (forward > (full + Math.abs(sweep)) / 2 ? forward - full : forward) / Math.abs(sweep);
}

/** The run of a segment between two points on it, in its direction. */
export function between(s: Segment, from: Point, to: Point): Segment {
  if (!isArc(s)) return { from, to, bulge: 0 };
  return { from, to, bulge: bulgeAround(arcOf(s).centre, from, to, s.bulge > 0 ? 'ccw' : 'cw') };
}

/** Direction of travel at a segment's start or end, of length 1. */
export function heading(s: Segment, at: 'start' | 'end'): Point {
  if (!isArc(s)) {
    const [dx, dy] = [s.to[0] - s.from[0], s.to[1] - s.from[1]];
    const l = Math.sqrt(dx * dx + dy * dy);
    return [dx / l, dy / l];
  }
  const { centre, radius } = arcOf(s);
  const [x, y] = at === 'start' ? s.from : s.to;
  const [ux, uy] = [(x - centre[0]) / radius, (y - centre[1]) / radius];
  return s.bulge > 0 ? [-uy, ux] : [uy, -ux];
}
