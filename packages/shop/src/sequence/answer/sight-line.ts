import type { FlatBend, Line, Point } from '@tinwright/core';
import type { HeldSide } from '../part/line.js';

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
