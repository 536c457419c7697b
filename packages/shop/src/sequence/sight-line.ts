import type { FlatBend, Line, Point } from '@tinwright/core';
import type { Held } from './line.js';

/**
 * The line set under the edge of the nose on a leaf brake: one inside radius from the tangent line on the held side,
 * towards the bend. Flat coordinates, mm.
 * Source: FAA-H-8083-31 (sight line one radius from the bend tangent line that goes under the nose).
 */
export function sightLine({ tangents, insideRadius }: FlatBend, held: Held): Line {
  const [own, other] = held === 'parent' ? tangents : [tangents[1], tangents[0]];
  const [a, b] = own;
  const along: Point = [b[0] - a[0], b[1] - a[1]];
  const l = Math.hypot(...along);
  const normal: Point = [-along[1] / l, along[0] / l];
  const towards = (other[0][0] - a[0]) * normal[0] + (other[0][1] - a[1]) * normal[1];
  const by = Math.sign(towards) * insideRadius;
  const moved = (p: Point): Point => [p[0] + normal[0] * by, p[1] + normal[1] * by];
  return [moved(a), moved(b)];
}
