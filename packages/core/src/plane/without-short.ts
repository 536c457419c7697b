import { arcOf, bulgeAround, isArc, type Loop, type Segment, type Vertex } from './loop.js';
import { lineCircle } from './meet.js';
import { add, cross, distance, type Point, scale, sub } from './point.js';

/**
 * The loop without straight segments under `least`, one by one or two in a row: their neighbours, of which one at least
 * is straight, run on until they meet, so that every other edge stays on its line or circle. Segments stay whose
 * neighbours would meet further off than `least`.
 * @param least mm
 */
export function withoutShort(loop: Loop, least: number): Loop {
  let kept = loop;
  for (let i = 0; i < kept.length && kept.length > 3; ) {
    const joined = joinedAt(kept, i, least);
    if (joined === null) i += 1;
    else kept = joined;
  }
  return kept;
}

function joinedAt(loop: Loop, i: number, least: number): Loop | null {
  if (!isShort(loop, i, least)) return null;
  const one = withoutSegments(loop, [i, 1], least);
  if (one !== null || loop.length < 5 || !isShort(loop, (i + 1) % loop.length, least)) return one;
  return withoutSegments(loop, [i, 2], least);
}

function isShort(loop: Loop, i: number, least: number): boolean {
  const v = loop[i] as Vertex;
  return !isArc(v) && distance(v.at, (loop[(i + 1) % loop.length] as Vertex).at) < least;
}

/** Without so many segments from `i` on; null where their neighbours do not meet near them. */
function withoutSegments(loop: Loop, [i, count]: readonly [number, number], least: number): Loop | null {
  const index = (k: number) => (i + k + loop.length) % loop.length;
  const at = (k: number) => loop[index(k)] as Vertex;
  const segment = (k: number): Segment => ({ from: at(k).at, to: at(k + 1).at, bulge: at(k).bulge });
  const [before, after] = [segment(-1), segment(count)];
  const near = (p: Point) => distance(p, before.to) < least && distance(p, after.from) < least;
  const met = meeting(before, after).find(near);
  if (met === undefined) return null;
  return loop.flatMap((v, k) => {
    if ((k - i + loop.length) % loop.length < count) return [];
    if (k === index(count)) return [{ at: met, bulge: moved(after, met, after.to) }];
    return k === index(-1) ? [{ at: v.at, bulge: moved(before, before.from, met) }] : [v];
  });
}

/** Bulge of the same line or circle between other ends. */
function moved(segment: Segment, from: Point, to: Point): number {
  if (!isArc(segment)) return 0;
  return bulgeAround(arcOf(segment).centre, from, to, segment.bulge > 0 ? 'ccw' : 'cw');
}

/** Where two segments meet, or would if they ran on; nowhere for two arcs. */
function meeting(a: Segment, b: Segment): readonly Point[] {
  if (isArc(a)) return isArc(b) ? [] : lineCircle(b, arcOf(a));
  if (isArc(b)) return lineCircle(a, arcOf(b));
  const [u, v] = [sub(a.to, a.from), sub(b.to, b.from)];
  const area = cross(u, v);
  return area === 0 ? [] : [add(a.from, scale(u, cross(sub(b.from, a.from), v) / area))];
}
