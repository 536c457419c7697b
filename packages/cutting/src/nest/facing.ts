import { isArc, type Loop, type Point, segments } from '@tinwright/core';

/** A straight edge of an outline: where it starts, its direction, length 1, and how long it is, mm. */
export interface StraightEdge {
  readonly from: Point;
  readonly along: Point;
  readonly length: number;
}

/** Two edges, of a body and of what lies round it, that run against each other: one faces the other, or their backs do. */
export interface EdgePair {
  readonly own: StraightEdge;
  readonly other: StraightEdge;
  /** How far apart they are, out of the own one's part. */
  readonly gap: number;
  /** Where the other edge starts and ends along the own one. */
  readonly begin: number;
  readonly end: number;
}

/** The straight edges of a counter-clockwise outline that are as long as that or longer. */
export function edgesOf(outline: Loop, least: number): readonly StraightEdge[] {
  return segments(outline).flatMap((s) => {
    const [dx, dy] = [s.to[0] - s.from[0], s.to[1] - s.from[1]];
    const length = Math.sqrt(dx * dx + dy * dy);
    return isArc(s) || length < least ? [] : [{ from: s.from, along: [dx / length, dy / length], length }];
  });
}

/** How two edges face each other; undefined where they are not parallel. */
export function facing(own: StraightEdge, other: StraightEdge): EdgePair | undefined {
  const [ux, uy] = own.along;
  const [vx, vy] = other.along;
  if (Math.abs(ux * vy - uy * vx) > 1e-9 || ux * vx + uy * vy > 0) return undefined;
  const [x, y] = [other.from[0] - own.from[0], other.from[1] - own.from[1]];
  const end = x * ux + y * uy;
  return { own, other, gap: x * uy - y * ux, begin: end - other.length, end };
}

/** Length they have in common once the own one has moved; 0 where they are not a kerf apart then. */
export function inCommon({ own, gap, begin, end }: EdgePair, [dx, dy]: Point, kerf: number): number {
  const [ux, uy] = own.along;
  if (Math.abs(gap - kerf - (dx * uy - dy * ux)) > 1e-7) return 0;
  const by = dx * ux + dy * uy;
  return Math.max(0, Math.min(own.length, end - by) - Math.max(0, begin - by));
}
