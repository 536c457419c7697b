import type { Point } from '@tinwright/core';
import { type Convex, meet, meetsOnWay, turned } from '../../sweep/polygon.js';
import { hasWayOut } from '../../sweep/way-out.js';
import type { PressTools } from '../../tools/press-tools.js';
import type { Interval } from './stretches.js';

/** A section of the part as it lies under the punch, its point at the origin. mm */
export interface UnderPunch {
  readonly section: Convex;
  readonly y: Interval;
}

const FAR = 2000; // mm

/** A section seen from the point of the punch, the side it lies on risen by half the angle. @param rise radians */
export function risen(seen: Convex, moves: boolean, rise: number): Convex {
  const up = turned(seen, rise);
  // the held side was mirrored onto the free one
  return moves ? up : up.map(([x, z]): Point => [-x, z]).toReversed();
}

/** True where a section would take the punch along as it goes down from it. */
export const hooks = (section: Convex, { punch, ram }: Pick<PressTools, 'punch' | 'ram'>): boolean =>
  [...punch, ram].some((o) => meetsOnWay(section, 0, -FAR, o));

/**
 * True when a part comes off an open punch, as it came under it: straight down, along the line past the end of the
 * punch, or tilted. @param stands where pieces of the punch stand along the line
 */
export function comesOff(
  parts: readonly UnderPunch[],
  tools: Pick<PressTools, 'punch' | 'ram'>,
  stands: readonly Interval[],
): boolean {
  const { punch, ram } = tools;
  const under = ({ y }: UnderPunch) => stands.some(([a, b]) => y[1] > a + 1e-6 && y[0] < b - 1e-6);
  const near = parts.filter(under);
  if (!near.some((p) => hooks(p.section, tools))) return true;
  const [from, to] = [Math.min(...stands.map((s) => s[0])), Math.max(...stands.map((s) => s[1]))];
  const beside = parts.filter(({ section }) => punch.some((p) => meet(section, p)));
  if (beside.every((p) => p.y[0] >= to - 1e-6) || beside.every((p) => p.y[1] <= from + 1e-6)) return true;
  // down is where a way out looks forward
  const down = (shape: Convex): Convex => shape.map(([x, z]): Point => [-z, x]);
  const against = [...punch, ram].map(down);
  return hasWayOut({ body: near.map((p) => ({ piece: down(p.section), against })), past: 0, down: FAR });
}
