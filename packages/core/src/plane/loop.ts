import { distance, type Point, SAME } from './point.js';

/**
 * A vertex of a closed loop. `bulge` bends the segment that starts here:
 * tan(sweep / 4), counter-clockwise positive, 0 for a straight line.
 */
export interface Vertex {
  readonly at: Point;
  readonly bulge: number;
}

/** A closed outline of lines and arcs; the last vertex joins the first. Counter-clockwise round material. */
export type Loop = readonly Vertex[];

/** One line or arc of a loop. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
  readonly bulge: number;
}

/** Circle under an arc segment; `start` and `sweep` in radians, sweep signed, counter-clockwise positive. */
export interface Arc {
  readonly centre: Point;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}

/** Box around something: least and greatest corner, mm. */
export interface Box {
  readonly min: Point;
  readonly max: Point;
}

/** A vertex with a straight line after it. */
export const corner = (x: number, y: number): Vertex => ({ at: [x, y], bulge: 0 });

/** The segments of a loop, in order. */
export function segments(loop: Loop): readonly Segment[] {
  return loop.map((_, i) => segmentAt(loop, i));
}

/** The segment that starts at vertex `i`. */
function segmentAt(loop: Loop, i: number): Segment {
  const { at, bulge } = loop[i] as Vertex;
  return { from: at, to: (loop[(i + 1) % loop.length] as Vertex).at, bulge };
}

/** True for a segment that is bent enough to have a circle: under 1e-9 it is a straight line to any tool. */
export function isArc({ bulge }: Pick<Segment, 'bulge'>): boolean {
  return Math.abs(bulge) > 1e-9;
}

/** The circle a bulged segment runs on. Only for an arc. */
export function arcOf({ from, to, bulge }: Segment): Arc {
  const h = (1 - bulge * bulge) / (4 * bulge);
  const centre: Point = [
    (from[0] + to[0]) / 2 - (to[1] - from[1]) * h,
    (from[1] + to[1]) / 2 + (to[0] - from[0]) * h,
  ];
  return {
    centre,
    radius: distance(from, centre),
    start: Math.atan2(from[1] - centre[1], from[0] - centre[0]),
    sweep: 4 * Math.atan(bulge),
  };
}

/** Bulge of the arc from `from` to `to` round `centre`, counter-clockwise or clockwise. */
export function bulgeAround(centre: Point, from: Point, to: Point, turn: 'ccw' | 'cw'): number {
  const a = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  const b = Math.atan2(to[1] - centre[1], to[0] - centre[0]);
  const full = 2 * Math.PI;
  const sweep = turn === 'ccw' ? (((b - a) % full) + full) % full : -((((a - b) % full) + full) % full);
  return Math.tan(sweep / 4);
}

/** A full circle as two half-circle arcs, counter-clockwise. */
export function circleLoop(centre: Point, radius: number): Loop {
  return [
    { at: [centre[0] + radius, centre[1]], bulge: 1 },
    { at: [centre[0] - radius, centre[1]], bulge: 1 },
  ];
}

/** Exact length of a segment, mm. */
export function segmentLength(s: Segment): number {
  if (!isArc(s)) return distance(s.from, s.to);
  const { radius, sweep } = arcOf(s);
  return radius * Math.abs(sweep);
}

/** Exact length of a loop, mm. */
export function loopLength(loop: Loop): number {
  return loop.reduce((sum, _, i) => sum + segmentLength(segmentAt(loop, i)), 0);
}

/** Exact signed area, mm²: positive for a counter-clockwise loop. */
export function loopArea(loop: Loop): number {
  return loop.reduce((sum, _, i) => {
    const s = segmentAt(loop, i);
    const chord = (s.from[0] * s.to[1] - s.to[0] * s.from[1]) / 2;
    if (!isArc(s)) return sum + chord;
    const { radius, sweep } = arcOf(s);
    return sum + chord + (radius * radius * (sweep - Math.sin(sweep))) / 2;
  }, 0);
}

/** The points where a segment can reach furthest along x or y: its ends, and an arc's four compass points. */
export function reach(s: Segment): readonly Point[] {
  if (!isArc(s)) return [s.from, s.to];
  const { centre, radius, start, sweep } = arcOf(s);
  const full = 2 * Math.PI;
  const compass: readonly Point[] = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ];
  const passed = compass.filter((_, k) => {
    const turn = ((((k * Math.PI) / 2 - start) % full) + full) % full;
    return (sweep > 0 ? turn : full - turn) <= Math.abs(sweep);
  });
  return [s.from, s.to, ...passed.map(([x, y]): Point => [centre[0] + radius * x, centre[1] + radius * y])];
}

/** Box around points. */
export function boxOf(points: readonly Point[]): Box {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    if (x < x0) x0 = x;
    if (y < y0) y0 = y;
    if (x > x1) x1 = x;
    if (y > y1) y1 = y;
  }
  return { min: [x0, y0], max: [x1, y1] };
}

/** Exact box around a loop. */
export function loopBox(loop: Loop): Box {
  const points = loop.map((v) => v.at);
  loop.forEach((v, i) => {
    if (isArc(v)) points.push(...reach(segmentAt(loop, i)));
  });
  return boxOf(points);
}

/** The same loop without zero-length segments and without vertices in the middle of a straight run. */
export function tidy(loop: Loop): Loop {
  const kept: Vertex[] = [];
  for (const v of loop) {
    const last = kept[kept.length - 1];
    if (last !== undefined && distance(last.at, v.at) < SAME) kept[kept.length - 1] = v;
    else kept.push(v);
  }
  if (kept.length > 1 && distance((kept[0] as Vertex).at, (kept.at(-1) as Vertex).at) < SAME) kept.pop();
  // against the last corner that stays, so that many small turns in a row are not all dropped
  const corners: Vertex[] = [];
  kept.forEach((v, i) => {
    const before = corners[corners.length - 1] ?? (kept[kept.length - 1] as Vertex);
    const after = kept[(i + 1) % kept.length] as Vertex;
    if (isArc(before) || isArc(v) || !between(before.at, v.at, after.at)) corners.push(v);
  });
  return corners;
}

/** True when `p` lies on the straight way from `a` to `b`. */
function between(a: Point, p: Point, b: Point): boolean {
  const ux = p[0] - a[0];
  const uy = p[1] - a[1];
  const vx = b[0] - p[0];
  const vy = b[1] - p[1];
  return (
    Math.abs(ux * vy - uy * vx) < SAME * (Math.sqrt(ux * ux + uy * uy) + Math.sqrt(vx * vx + vy * vy)) &&
    ux * vx + uy * vy > 0
  );
}
