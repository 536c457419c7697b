import { type Loop, type Point, segments } from '@tinwright/core';
import { bulgeValue, coordinate } from '../number.js';

/** SVG path data of a closed loop: lines and true arcs, each side from where the last ended. y points down from `origin`. */
export function pathData(loop: Loop, origin: Point): string {
  const place = ([x, y]: Point) => `${coordinate(origin[0] + x)} ${coordinate(origin[1] - y)}`;
  const sides = segments(loop).map(({ from, to, bulge: given }) => {
    const bulge = bulgeValue(given);
    if (bulge === 0) return `L ${place(to)}`;
    const radius = coordinate((Math.hypot(to[0] - from[0], to[1] - from[1]) * (bulge + 1 / bulge)) / 4);
    // a bulge is the tangent of a quarter of its arc's angle, positive counter-clockwise: the other way once y points down
    return `A ${Math.abs(radius)} ${Math.abs(radius)} 0 ${Math.abs(bulge) > 1 ? 1 : 0} ${bulge > 0 ? 0 : 1} ${place(to)}`;
  });
  return `M ${place((loop[0] as Loop[number]).at)} ${sides.join(' ')} Z`;
}
