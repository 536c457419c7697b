import type { FlatBend, Line, Point } from '@tinwright/core';
import type { HeldSide, LineFrame } from '../part/line.js';

/**
 * From the tangent line on the held side to the edge of the nose, towards the bend, mm: the hinge lies so far in front of
 * that line, the nose stands a set-back behind the hinge. With a set-back of T at 90°, where the nose gives the radius,
 * that is one inside radius (FAA-H-8083-31: sight line one radius from the bend tangent line that goes under the nose);
 * with a set-back of tan(A/2) (R + T), where the room before a sharp nose does, it is nothing.
 * @param setBack of the fingers, mm
 */
export const sightOffset = ({ reach }: Pick<LineFrame, 'reach'>, setBack: number): number =>
  reach.held - setBack;

/**
 * The line set under the edge of the nose on a leaf brake: so far from the tangent line on the held side, towards the
 * bend. A tangent line runs with its parent on the right, so a bend has its sides whatever its width. Flat coordinates, mm.
 */
export function sightLine({ tangents }: Pick<FlatBend, 'tangents'>, held: HeldSide, offset: number): Line {
  const [a, b] = tangents[held === 'parent' ? 0 : 1];
  const along: Point = [b[0] - a[0], b[1] - a[1]];
  const by = (held === 'parent' ? offset : -offset) / Math.hypot(...along);
  const moved = (p: Point): Point => [p[0] - along[1] * by, p[1] + along[0] * by];
  return [moved(a), moved(b)];
}
