import { arcOf, isArc, type Segment } from './loop.js';
import { distance, mix, type Point } from './point.js';

/** The shortest way between two things in the plane. mm */
export interface Between {
  readonly distance: number;
  readonly from: Point;
  readonly to: Point;
}

const FULL = 2 * Math.PI;

/** The shortest way between two lines or arcs that do not cross: exact. */
export function closest(a: Segment, b: Segment): Between {
  const ways = [
    ...ends(a).map((p) => ({ from: p, to: nearestOn(b, p) })),
    ...ends(b).map((p) => ({ from: nearestOn(a, p), to: p })),
    ...(!isArc(a) && !isArc(b) ? [] : alongNormal(a, b)),
  ];
  return ways
    .map(({ from, to }): Between => ({ from, to, distance: distance(from, to) }))
    .reduce((best, way) => (way.distance < best.distance ? way : best));
}

/** The point of a line or arc nearest to `p`. */
export function nearestOn(s: Segment, p: Point): Point {
  if (isArc(s)) {
    const { centre, radius } = arcOf(s);
    const away = distance(p, centre);
    const onCircle = away === 0 ? s.from : mix(centre, p, radius / away);
    if (away > 0 && onArc(s, onCircle)) return onCircle;
    return distance(p, s.from) <= distance(p, s.to) ? s.from : s.to;
  }
  return mix(s.from, s.to, Math.max(0, Math.min(1, share(s, p))));
}

/** Ways square to both, away from ends: along the line through a centre. */
function alongNormal(a: Segment, b: Segment): readonly Pick<Between, 'from' | 'to'>[] {
  if (!isArc(a)) return alongNormal(b, a).map(({ from, to }) => ({ from: to, to: from }));
  const { centre } = arcOf(a);
  const other = !isArc(b) ? mix(b.from, b.to, share(b, centre)) : arcOf(b).centre;
  const apart = distance(centre, other);
  if (apart === 0) return []; // round one centre: as near everywhere, also at an end
  const on = (s: Segment): readonly Point[] => {
    if (!isArc(s)) return share(s, centre) > 0 && share(s, centre) < 1 ? [other] : [];
    const c = arcOf(s);
    const way: Point = [(other[0] - centre[0]) / apart, (other[1] - centre[1]) / apart];
    return [-c.radius, c.radius]
      .map((r): Point => [c.centre[0] + way[0] * r, c.centre[1] + way[1] * r])
      .filter((p) => onArc(s, p));
  };
  return on(a).flatMap((from) => on(b).map((to) => ({ from, to })));
}

const ends = ({ from, to }: Segment): readonly Point[] => [from, to];

/** Where a point lies along a straight segment: 0 at its start, 1 at its end. */
function share({ from, to }: Segment, p: Point): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const l2 = dx * dx + dy * dy;
  return l2 === 0 ? 0 : ((p[0] - from[0]) * dx + (p[1] - from[1]) * dy) / l2;
}

/** True for a point of the circle that lies on the arc. */
function onArc(s: Segment, p: Point): boolean {
  const { centre, start, sweep } = arcOf(s);
  const turn = (((Math.atan2(p[1] - centre[1], p[0] - centre[0]) - start) % FULL) + FULL) % FULL;
  return (sweep > 0 ? turn : FULL - turn) <= Math.abs(sweep) + 1e-12 || turn === 0;
}
