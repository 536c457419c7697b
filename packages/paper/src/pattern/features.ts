import { type FlatPattern, type Loop, type Point, segments } from '@tinwright/core';
import { arcOf, roundOf } from '@tinwright/core/internal';

/** A straight side of the outline or of a hole that is none. */
export interface StraightSide {
  readonly from: Point;
  readonly to: Point;
}

/** A round piece of an outline: the relief at the root of a notch. */
export interface Round {
  readonly centre: Point;
  readonly radius: number;
}

/** A round hole. */
export interface RoundHole {
  readonly at: Point;
  readonly diameter: number;
}

/** What of a pattern is measured. Flat coordinates, mm. */
export interface Features {
  readonly sides: readonly StraightSide[];
  readonly rounds: readonly Round[];
  readonly holes: readonly RoundHole[];
  /** Openings that are no round holes. */
  readonly cutouts: readonly Loop[];
}

const SAME = 1e-6;

/** Sides and rounds of the outline, and round holes that carry no mark. */
export function featuresOf({ outline, holes, marks }: FlatPattern): Features {
  const all = segments(outline);
  const drilled = holes.flatMap((loop) => {
    const round = roundOf(loop);
    return round === null ? [] : [{ at: round.centre, diameter: 2 * round.radius }];
  });
  return {
    sides: all.filter((s) => s.bulge === 0).map(({ from, to }) => ({ from, to })),
    rounds: all
      .filter((s) => s.bulge !== 0)
      .map((s) => {
        const { centre, radius } = arcOf(s);
        return { centre, radius };
      }),
    holes: drilled.filter(
      ({ at }) => !marks.some((m) => m.hole !== null && Math.hypot(m.at[0] - at[0], m.at[1] - at[1]) < SAME),
    ),
    cutouts: holes.filter((loop) => roundOf(loop) === null),
  };
}

/** What a bend is called on a plan: B1, B2 … in the order of the pattern. */
export const bendNumber = (index: number): string => `B${index + 1}`;

/** True for a pattern that is its blank as sheared. */
export const isRectangle = ({ outline }: FlatPattern): boolean =>
  outline.length === 4 &&
  segments(outline).every((s) => s.bulge === 0 && (runsAcross(s, 0) || runsAcross(s, 1)));

/** True for a side along this axis' lines of equal value: upright for x, level for y. */
export const runsAcross = ({ from, to }: StraightSide, axis: 0 | 1): boolean =>
  Math.abs(from[axis] - to[axis]) < SAME;

/** Things in groups by a key, in the order the keys come up. */
export function groupsOf<T>(
  things: readonly T[],
  key: (t: T) => string,
): readonly (readonly [string, readonly T[]])[] {
  const found = new Map<string, T[]>();
  for (const t of things) found.set(key(t), [...(found.get(key(t)) ?? []), t]);
  return [...found];
}
