import { isArc, type Loop, type Point, type Segment, segments } from '@tinwright/core';
import { contains, corner, distanceToLoop, loopBox } from '@tinwright/core/internal';
import type { NestedSheet } from '../nest/result.js';

/** May the torch pass at a point while it begins or ends the cut along the drawn line of that index? */
export type OnScrap = (p: Point, own: number) => boolean;

/**
 * Scrap is what lies on the sheet in no part: inside no line, or inside a hole and the outline round it. The torch keeps
 * half a kerf from the line it is about to cut and a whole one from all others. @param drawn outlines and holes of all
 */
export function scrapOf(drawn: readonly Loop[], edge: Loop, kerf: number): OnScrap {
  const loops = drawn.map((loop) => ({ loop, sides: segments(loop), box: loopBox(loop) }));
  return (p, own) => {
    if (!contains(edge, p)) return false;
    const near = (i: number) => (i === own ? kerf / 2 : Math.max(kerf, 0.5));
    const about = loops.filter(({ box: { min, max } }) => inside(p, min, max, Math.max(kerf, 0.5)));
    const around = about.filter(({ loop }) => contains(loop, p)).length;
    return around % 2 === 0 && !about.some((l) => nearLoop(p, l, near(loops.indexOf(l))));
  };
}

/** Is a point nearer to a loop's line than that? Boxes first. */
function nearLoop(
  p: Point,
  { sides, loop }: { sides: readonly Segment[]; loop: Loop },
  near: number,
): boolean {
  return sides.some((s) => inBox(p, s, near)) && distanceToLoop(p, loop) < near;
}

function inside([x, y]: Point, min: Point, max: Point, far: number): boolean {
  return x > min[0] - far && x < max[0] + far && y > min[1] - far && y < max[1] + far;
}

function inBox(p: Point, s: Segment, near: number): boolean {
  const bow = isArc(s)
    ? Math.hypot(s.to[0] - s.from[0], s.to[1] - s.from[1]) * Math.max(1, Math.abs(s.bulge))
    : 0;
  const least: Point = [Math.min(s.from[0], s.to[0]), Math.min(s.from[1], s.to[1])];
  const most: Point = [Math.max(s.from[0], s.to[0]), Math.max(s.from[1], s.to[1])];
  return inside(p, least, most, near + bow);
}

/** The edge of a sheet or offcut. */
export function edgeOf({ stock }: NestedSheet): Loop {
  const corners = stock.outline ?? [
    [0, 0],
    [stock.x, 0],
    [stock.x, stock.y],
    [0, stock.y],
  ];
  return corners.map(([x, y]) => corner(x, y));
}
