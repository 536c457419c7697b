import type { Loop, Point, Segment } from '@tinwright/core';
import { bulgeValue, coordinate } from '../number.js';
import { type Cornered, cornersOf, sidesOf } from '../sides.js';

/**
 * SVG path data of a loop, closed, or an open path: lines and true arcs, each side from where the last ended. y points down from `origin`.
 * An arc of about half a turn is written in two: by its radius and ends alone the last decimal of either moves its
 * middle a thousand times as far.
 */
export function pathData(shape: Cornered, origin: Point): string {
  const place = ([x, y]: Point) => `${coordinate(origin[0] + x)} ${coordinate(origin[1] - y)}`;
  const sides = sidesOf(shape).flatMap(parted);
  const written = sides.map(({ from, to, bulge }) => {
    if (bulge === 0) return `L ${place(to)}`;
    const radius = coordinate((Math.hypot(to[0] - from[0], to[1] - from[1]) * (bulge + 1 / bulge)) / 4);
    // a bulge is the tangent of a quarter of its arc's angle, positive counter-clockwise: the other way once y points down
    return `A ${Math.abs(radius)} ${Math.abs(radius)} 0 ${Math.abs(bulge) > 1 ? 1 : 0} ${bulge > 0 ? 0 : 1} ${place(to)}`;
  });
  const [first] = cornersOf(shape) as readonly [Loop[number]];
  return `M ${place(first.at)} ${written.join(' ')}${shape.kind === 'loop' ? ' Z' : ''}`;
}

const NEAR_HALF = [0.8, 1.25] as const; // bulges: 155° and 205°

/** One arc as it is, of about half a turn in two. */
function parted({ from, to, bulge: given }: Segment): readonly Segment[] {
  const bulge = bulgeValue(given);
  const size = Math.abs(bulge);
  if (size < NEAR_HALF[0] || size > NEAR_HALF[1]) return [{ from, to, bulge }];
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const middle: Point = [(from[0] + to[0] + dy * bulge) / 2, (from[1] + to[1] - dx * bulge) / 2];
  const half = Math.tan(Math.atan(bulge) / 2);
  return [
    { from, to: middle, bulge: half },
    { from: middle, to, bulge: half },
  ];
}
