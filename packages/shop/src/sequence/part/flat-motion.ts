import type { Point } from '@tinwright/core';

/** A movement of the flat sheet in its plane, turned over or not: p ↦ turned (p or its mirror image) + shift. mm */
export interface Motion {
  readonly over: boolean;
  readonly cos: number;
  readonly sin: number;
  readonly shift: Point;
}

/** A point after a movement. */
export function moved({ over, cos, sin, shift }: Motion, [x, y]: Point): Point {
  const v = over ? -y : y;
  return [cos * x - sin * v + shift[0], sin * x + cos * v + shift[1]];
}

/** Every movement that lays the first side of an outline on some side of another one as long, both counter-clockwise. */
export function motionsBetween(
  from: readonly Point[],
  to: readonly Point[],
  even: number,
): readonly Motion[] {
  const [a, b] = from;
  if (a === undefined || b === undefined || from.length !== to.length) return [];
  return to.flatMap((p, i) => {
    const q = to[(i + 1) % to.length] as Point;
    if (Math.abs(Math.hypot(b[0] - a[0], b[1] - a[1]) - Math.hypot(q[0] - p[0], q[1] - p[1])) > even)
      return [];
    // turned over, an outline goes the other way round
    return [motion([a, b], [p, q], false), motion([a, b], [q, p], true)];
  });
}

function motion([a, b]: readonly [Point, Point], [p, q]: readonly [Point, Point], over: boolean): Motion {
  const sense = over ? -1 : 1;
  const turn = Math.atan2(q[1] - p[1], q[0] - p[0]) - Math.atan2(sense * (b[1] - a[1]), b[0] - a[0]);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [x, y] = moved({ over, cos, sin, shift: [0, 0] }, a);
  return { over, cos, sin, shift: [p[0] - x, p[1] - y] };
}
