import { isArc, type Point, type Segment } from '@tinwright/core';
import { segmentLength } from '@tinwright/core/internal';
import { heading } from './run.js';

/** Room a micro-joint keeps from corners, in widths of it. */
const FROM_CORNERS = 3;

/** Gaps in a cut that hold the piece, spread over the longest straight ones of its sides; fewer where there is no room. */
export function tiesOf(
  along: readonly Segment[],
  count: number,
  width: number,
): readonly (readonly [Point, Point])[] {
  if (count === 0) return [];
  const sides = along
    .filter((s) => !isArc(s))
    .map((side) => ({ side, length: segmentLength(side) }))
    .filter(({ length }) => length > (1 + 2 * FROM_CORNERS) * width)
    .sort((a, b) => b.length - a.length)
    .slice(0, count);
  const each = sides.map((_, i) => Math.floor(count / sides.length) + (i < count % sides.length ? 1 : 0));
  return sides.flatMap(({ side, length }, i) => {
    const [dx, dy] = heading(side, 'start');
    const on = (far: number): Point => [side.from[0] + dx * far, side.from[1] + dy * far];
    const room = Math.floor(length / ((1 + 2 * FROM_CORNERS) * width));
    const n = Math.min(each[i] as number, room);
    return Array.from({ length: n }, (_, k): readonly [Point, Point] => {
      const middle = (length * (k + 1)) / (n + 1);
      return [on(middle - width / 2), on(middle + width / 2)];
    });
  });
}
