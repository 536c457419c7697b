import { fail } from '../../errors/problem.js';
import { distanceToSegment } from '../../plane/inside.js';
import { bulgeAround, type Loop, type Segment, segments, type Vertex } from '../../plane/loop.js';
import { lineCircle } from '../../plane/meet.js';
import { distance, dot, type Point, SAME, sub } from '../../plane/point.js';
import type { Line } from './flat.js';

/** A round relief on the flat, mm. */
export interface Circle {
  readonly centre: Point;
  readonly radius: number;
}

/** A line pulled back to the circle where one of its ends lies inside. */
export function outOfHole(line: Line, circle: Circle): Line {
  const [from, to] = line;
  const hits = lineCircle({ from, to, bulge: 0 }, circle);
  const inside = (p: Point) => distance(p, circle.centre) < circle.radius;
  const [first, last] = [hits[0] ?? from, hits.at(-1) ?? to];
  return [inside(from) ? last : from, inside(to) ? first : to];
}

/**
 * Take a round relief out of a counter-clockwise outline: stretches inside the circle give way to arcs of it.
 * @throws JobError `relief-too-large` when that would cut the outline in two or meet another relief
 */
export function biteHole(loop: Loop, circle: Circle): Loop {
  const kept: Vertex[] = [];
  const enters: Point[] = [];
  const exits: Point[] = [];
  for (const s of segments(loop)) {
    if (!isIn(s.from, circle)) kept.push({ at: s.from, bulge: s.bulge });
    for (const { at, way } of crossings(s, circle)) {
      if (way === 'in') enters.push(at);
      else exits.push(at);
      kept.push({ at, bulge: way === 'in' ? MARK : 0 });
    }
  }
  // each way in must lead round the circle to the way out that follows it on the outline
  const shift = exits.length === enters.length && isIn((loop[0] as Vertex).at, circle) ? 1 : 0;
  const pairs = enters.map((at, i) => [at, exits[(i + shift) % exits.length] as Point] as const);
  if (pairs.length === 0 || pairs.length !== exits.length || !pairs.every((p) => follows(p, exits, circle)))
    return tooLarge(circle);
  return kept.map((v) => {
    const pair = v.bulge === MARK ? pairs.find(([at]) => at === v.at) : undefined;
    return pair === undefined ? v : { at: v.at, bulge: bulgeAround(circle.centre, pair[0], pair[1], 'cw') };
  });
}

const MARK = Number.POSITIVE_INFINITY; // stands for an arc still to be measured

const isIn = (p: Point, { centre, radius }: Circle) => distance(p, centre) < radius - SAME;

interface Crossing {
  readonly at: Point;
  readonly way: 'in' | 'out';
}

/** Where a straight segment passes into or out of the circle, in its order. */
function crossings(s: Segment, circle: Circle): readonly Crossing[] {
  const length = distance(s.from, s.to);
  const hits = lineCircle(s, circle).filter((p) => {
    const t = dot(sub(p, s.from), sub(s.to, s.from)) / length;
    return t > SAME && t < length - SAME;
  });
  if (s.bulge !== 0) return hits.length > 0 && nearArc(s, circle) ? tooLarge(circle) : [];
  const [from, to] = [isIn(s.from, circle), isIn(s.to, circle)];
  if (from && to) return [];
  if (hits.length === 2)
    return [
      { at: hits[0] as Point, way: 'in' },
      { at: hits[1] as Point, way: 'out' },
    ];
  const at = hits[0];
  if (at === undefined || from === to) return [];
  return [{ at, way: from ? 'out' : 'in' }];
}

const nearArc = (s: Segment, { centre, radius }: Circle) => distanceToSegment(centre, s) < radius;

/** True when the first way out met, going clockwise from the way in, is its own. */
function follows(
  [enter, exit]: readonly [Point, Point],
  exits: readonly Point[],
  { centre }: Circle,
): boolean {
  const turn = (p: Point) => Math.abs(4 * Math.atan(bulgeAround(centre, enter, p, 'cw')));
  return exits.every((x) => x === exit || turn(x) > turn(exit));
}

function tooLarge({ radius }: Circle): never {
  return fail(
    'relief-too-large',
    ['relief'],
    (say) => `a relief hole of ${say.size(2 * radius)} is too large for the notch it stands in`,
    'Choose slot or none',
  );
}
