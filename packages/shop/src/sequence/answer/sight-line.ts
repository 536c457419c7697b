import type { FlatBend, Line, Point } from '@tinwright/core';
import type { Held } from '../part/line.js';

/**
 * From the tangent line on the held side to the edge of the nose, towards the bend, mm. The bend's mould line comes to lie
 * at the hinge, a setback in front of the tangent line, and the nose stands a set-back behind it. With a set-back of T,
 * where the nose gives the radius, that is one inside radius (FAA-H-8083-31: sight line one radius from the bend tangent
 * line that goes under the nose); with a set-back of R + T, where the room before a sharp nose does, it is nothing.
 * @param setback outside setback of the bend  @param setBack of the fingers
 */
export const sightOffset = (setback: number, setBack: number): number => setback - setBack;

/** The line set under the edge of the nose on a leaf brake: so far from the tangent line on the held side. Flat coordinates, mm. */
export function sightLine({ tangents }: FlatBend, held: Held, offset: number): Line {
  const [own, other] = held === 'parent' ? tangents : [tangents[1], tangents[0]];
  const [a, b] = own;
  const along: Point = [b[0] - a[0], b[1] - a[1]];
  const l = Math.hypot(...along);
  const normal: Point = [-along[1] / l, along[0] / l];
  const towards = (other[0][0] - a[0]) * normal[0] + (other[0][1] - a[1]) * normal[1];
  const by = (towards < 0 ? -1 : 1) * offset;
  const moved = (p: Point): Point => [p[0] + normal[0] * by, p[1] + normal[1] * by];
  return [moved(a), moved(b)];
}
