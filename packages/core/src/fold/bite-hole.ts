import { fail } from '../errors/problem.js';
import { bulgeAround, type Loop, type Vertex } from '../plane/loop.js';
import { lineCircle } from '../plane/meet.js';
import { distance, type Point, SAME } from '../plane/point.js';
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
 * Cut a round hole at a vertex of a counter-clockwise outline: the outline leaves the circle, and comes back to
 * it, where it first crosses it on either side of the vertex; between the two runs the circle, through material.
 * @throws JobError `relief-too-large` when the circle swallows a whole side of the notch
 */
export function biteHole(loop: Loop, { centre, radius }: Circle): Loop {
  const k = loop.findIndex((v) => distance(v.at, centre) < SAME);
  if (k < 0) return loop;
  const n = loop.length;
  const turned = [...loop.slice(k), ...loop.slice(0, k)];
  const out = firstOutside(turned, centre, radius);
  const back = firstOutside([turned[0] as Vertex, ...turned.slice(1).toReversed()], centre, radius);
  if (out === null || back === null || out.steps + back.steps > n)
    return fail(
      'relief-too-large',
      [],
      `a relief hole of ${2 * radius} mm swallows the notch it stands in`,
      'Make it smaller',
    );
  const enter: Vertex = { at: back.at, bulge: bulgeAround(centre, back.at, out.at, 'cw') };
  return [enter, { at: out.at, bulge: 0 }, ...turned.slice(out.steps, n - back.steps + 1)];
}

/** Where the path from its first vertex first leaves the circle, and how many vertices lie inside. */
function firstOutside(
  path: readonly Vertex[],
  centre: Point,
  radius: number,
): { at: Point; steps: number } | null {
  const steps = path.findIndex((v) => distance(v.at, centre) > radius);
  if (steps < 1) return null;
  const [from, to] = [(path[steps - 1] as Vertex).at, (path[steps] as Vertex).at];
  const hits = lineCircle({ from, to, bulge: 0 }, { centre, radius });
  const at = hits.at(-1); // the farther one along the segment
  return at === undefined ? null : { at, steps };
}
