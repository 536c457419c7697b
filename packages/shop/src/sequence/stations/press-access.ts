import type { Point } from '@tinwright/core';
import { type Convex, meet, meetsOnWay, turned } from '../../sweep/polygon.js';
import { hasWayOut } from '../../sweep/way-out.js';
import type { PressTools } from '../../tools/press-tools.js';
import { spanOf } from '../part/line.js';
import { OUT } from './out.js';
import type { Interval } from './stretches.js';

/** A section of the part as it lies under the punch, its point at the origin. mm */
export interface UnderPunch {
  readonly section: Convex;
  readonly y: Interval;
  /** True for the sheet beside the line. */
  readonly flat: boolean;
}

/** What stands over the part. */
export type PunchAndRam = Pick<PressTools, 'punch' | 'ram'>;

/** A section seen from the point of the punch, the side it lies on risen by half the angle. @param rise radians */
export function risen(seen: Convex, moves: boolean, rise: number): Convex {
  const up = turned(seen, rise);
  // the held side was mirrored onto the free one
  return moves ? up : up.map(([x, z]): Point => [-x, z]).toReversed();
}

/** True where a section would take the punch along as it goes down from it. */
export const hooks = (section: Convex, { punch, ram }: PunchAndRam): boolean =>
  [...punch.map((p) => p.shape), ram].some((o) => meetsOnWay(section, 0, -OUT, o));

/** A piece of the part under the punch, with what of punch and ram is over it. */
interface Near {
  readonly section: Convex;
  readonly against: readonly Convex[];
}

function nearOf(
  parts: readonly UnderPunch[],
  { punch, ram }: PunchAndRam,
  stands: readonly Interval[],
): readonly Near[] {
  const [from, to] = spanOf(stands);
  const over = ({ y }: UnderPunch, back: number) =>
    y[1] > from + back + 1e-6 &&
    y[0] < to - back - 1e-6 &&
    stands.some(([a, b]) => y[1] > a + 1e-6 && y[0] < b - 1e-6);
  return parts
    .filter((p) => over(p, 0))
    .map((p) => ({
      section: p.section,
      against: [...punch.flatMap((s) => (over(p, s.back) ? [s.shape] : [])), ram],
    }));
}

/** How a part slides off an open punch: straight down, or along the line past its end; null for neither. @param stands where it stands along the line */
export function slidesOff(
  parts: readonly UnderPunch[],
  tools: PunchAndRam,
  stands: readonly Interval[],
): 'straight' | 'along' | null {
  const near = nearOf(parts, tools, stands);
  if (!near.some(({ section, against }) => against.some((o) => meetsOnWay(section, 0, -OUT, o))))
    return 'straight';
  const [from, to] = spanOf(stands);
  const beside = parts.flatMap(({ section, y }) =>
    tools.punch.flatMap(({ shape, back }) => (meet(section, shape) ? [{ y, back }] : [])),
  );
  const passes =
    beside.every(({ y, back }) => y[0] >= to - back - 1e-6) ||
    beside.every(({ y, back }) => y[1] <= from + back + 1e-6);
  return passes ? 'along' : null;
}

/** True when it comes off tilted. */
export function tiltsOff(
  parts: readonly UnderPunch[],
  tools: PunchAndRam,
  stands: readonly Interval[],
): boolean {
  // down is where a way out looks forward
  const down = (shape: Convex): Convex => shape.map(([x, z]): Point => [-z, x]);
  const known = new Map([...tools.punch.map((p) => p.shape), tools.ram].map((s) => [s, down(s)]));
  const body = nearOf(parts, tools, stands).map(({ section, against }) => ({
    piece: down(section),
    against: against.map((s) => known.get(s) as Convex),
  }));
  return hasWayOut({ body, past: 0, down: OUT });
}
