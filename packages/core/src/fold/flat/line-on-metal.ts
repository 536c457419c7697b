import { contains } from '../../plane/inside.js';
import type { Loop, Segment } from '../../plane/loop.js';
import { meetings } from '../../plane/meet.js';
import { distance, mix, type Point } from '../../plane/point.js';
import type { Line } from './flat.js';

/** A line whose ends are brought back onto the outline where they lie beyond it. @param edges of the outline */
export function lineOnMetal(line: Line, outline: Loop, edges: readonly Segment[]): Line {
  const middle = mix(line[0], line[1], 0.5);
  const end = (p: Point): Point => {
    if (contains(outline, mix(p, middle, 1e-4))) return p;
    const met = edges.flatMap((e) => meetings({ from: p, to: middle, bulge: 0 }, e));
    return met.reduce((near, q) => (distance(q, middle) < distance(near, middle) ? q : near), p);
  };
  return [end(line[0]), end(line[1])];
}
