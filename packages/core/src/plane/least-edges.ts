import { crossesItself } from './crosses-itself.js';
import { type Loop, loopArea, type Vertex } from './loop.js';
import type { Point } from './point.js';

/** Rounds of mending an outline, for every corner it has. */
const ROUNDS = 3;

/**
 * The outline without straight edges under `least`, as far as taking metal off can help: a small chamfer is widened, the
 * foot of a small notch runs to a point, a small step becomes a slope. Never is metal added, nor taken further than
 * about `least` from the edge. What would make a neighbour too short, or lies beside an arc, stays as it is.
 * @param loop counter-clockwise @param least mm
 */
export function leastEdges(loop: Loop, least: number): Loop {
  let kept = loop;
  for (let left = ROUNDS * loop.length; left > 0; left--) {
    const next = mended(kept, least);
    if (next === null) break;
    kept = next;
  }
  const sound = !crossesItself(kept) && loopArea(kept) > 0 && loopArea(kept) <= loopArea(loop) + 1e-9;
  return kept === loop || sound ? kept : loop;
}

function mended(loop: Loop, least: number): Loop | null {
  for (let i = 0; i < loop.length && loop.length > 3; i++) {
    const found = mendedAt(loop, i, least);
    if (found !== null) return found;
  }
  return null;
}

/** A short edge from p to q between two straight ones: from a to p, and from q to b. */
interface Short {
  readonly a: Point;
  readonly p: Point;
  readonly q: Point;
  readonly b: Point;
}

function mendedAt(loop: Loop, i: number, least: number): Loop | null {
  const n = loop.length;
  const at = (k: number) => loop[(i + k + n) % n] as Vertex;
  const straight = [at(-1), at(0), at(1)].every((v) => v.bulge === 0);
  const short: Short = { a: at(-1).at, p: at(0).at, q: at(1).at, b: at(2).at };
  if (!straight || far(short.p, short.q) >= least - 1e-9) return null;
  const [atP, atQ] = [turn(short.a, short.p, short.q), turn(short.p, short.q, short.b)];
  const ends =
    atP > 0 && atQ > 0
      ? widened(short, least)
      : atP <= 0 && atQ <= 0
        ? pointed(short, least)
        : atP > 0
          ? sloped(short, least)
          : turnedRound(sloped(turnedRoundShort(short), least));
  if (ends === null) return null;
  const [p, q] = ends;
  const same = far(p, q) < 1e-9;
  return loop.flatMap((v, k): readonly Vertex[] => {
    if (k === i) return [{ at: p, bulge: 0 }];
    if (k === (i + 1) % n) return same ? [] : [{ at: q, bulge: 0 }];
    return [v];
  });
}

type Ends = readonly [Point, Point];

/** A chamfer moved into the metal until it is long enough. */
function widened({ a, p, q, b }: Short, least: number): Ends | null {
  const [back, on, along] = [way(p, a), way(q, b), way(p, q)];
  const [down, also] = [cross(along, back), cross(along, on)]; // how fast each end leaves the edge's line
  if (down <= 1e-9 || also <= 1e-9) return null;
  const grows = dot(on, along) / also - dot(back, along) / down;
  if (grows <= 1e-9) return null;
  const depth = (least - far(p, q)) / grows;
  const [s, r] = [depth / down, depth / also];
  if (s > far(a, p) - least || r > far(q, b) - least) return null;
  return [step(p, back, s), step(q, on, r)];
}

/** The foot of a notch run on to where its sides meet. */
function pointed({ a, p, q, b }: Short, least: number): Ends | null {
  const [u, v] = [way(a, p), way(b, q)];
  const across = cross(u, v);
  if (Math.abs(across) < 1e-9) return null;
  const s = ((q[0] - p[0]) * v[1] - (q[1] - p[1]) * v[0]) / across;
  const met = step(p, u, s);
  return s >= 0 && far(met, p) <= least && far(met, q) <= least ? [met, met] : null;
}

/** A step whose upper corner p is cut back until the slope to q is long enough. */
function sloped({ a, p, q }: Short, least: number): Ends | null {
  const back = way(p, a);
  const along = dot(back, [p[0] - q[0], p[1] - q[1]]);
  const s = Math.sqrt(along ** 2 + least ** 2 - far(p, q) ** 2) - along;
  return s > far(a, p) - least ? null : [step(p, back, s), q];
}

const turnedRoundShort = ({ a, p, q, b }: Short): Short => ({ a: b, p: q, q: p, b: a });
const turnedRound = (ends: Ends | null): Ends | null => ends && [ends[1], ends[0]];

const far = (p: Point, q: Point): number => Math.hypot(q[0] - p[0], q[1] - p[1]);
const dot = (u: Point, v: Point): number => u[0] * v[0] + u[1] * v[1];
const cross = (u: Point, v: Point): number => u[0] * v[1] - u[1] * v[0];
const step = (p: Point, u: Point, s: number): Point => [p[0] + s * u[0], p[1] + s * u[1]];

function way(p: Point, q: Point): Point {
  const length = far(p, q);
  return [(q[0] - p[0]) / length, (q[1] - p[1]) / length];
}

/** Above 0 where the outline turns left: a convex corner. */
function turn(a: Point, p: Point, b: Point): number {
  return cross([p[0] - a[0], p[1] - a[1]], [b[0] - p[0], b[1] - p[1]]);
}
