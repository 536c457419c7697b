import type { Point } from '@tinwright/core';
import { convexHull, convexPieces } from '@tinwright/core/internal';
import type { Die, Horns, Press, Punch } from '../machines/shop.js';
import { type Convex, grown, rectangle } from '../sweep/polygon.js';
import { FLUSH, TOOL_DEPTH } from './margin.js';

/**
 * Sections of a press brake as convex pieces, seen along the line: x across, z up from the point of the punch, where
 * the inside of the bend lies. The die's top touches the sheet from below at the start.
 */
export interface PressTools {
  readonly punch: readonly PunchPiece[];
  readonly ram: Convex;
  readonly die: readonly Convex[];
  /** What the die stands on, as long as the machine. */
  readonly bed: Convex;
  /** The die stands only under the punch. */
  readonly sectioned: boolean;
  /** Flat bars that close hems, over the sheet and under it. */
  readonly bars: readonly [Convex, Convex];
}

/** A convex piece of a punch. */
export interface PunchPiece {
  readonly shape: Convex;
  /** The same as the held side sees it, once that side is mirrored onto the free one. */
  readonly behind: Convex;
  /** How far it stays back from the ends of what is mounted, over the feet of horns; 0 for what reaches to them. mm */
  readonly back: number;
}

/** A punch and the die under it; with its horns at the ends, or without. */
export interface Tooling {
  readonly punch: Punch;
  readonly die: Die;
  readonly horns: Horns | null;
}

/** Half the width of a flattening bar, mm. Judgement. */
export const FLATTENING_BAR = 25;

export function pressTools(
  press: Pick<Press, 'ram' | 'bed'>,
  { punch, die, horns }: Tooling,
  thickness: number,
  margin: number,
): PressTools {
  const { half, height } = press.ram;
  const under = die.section.map(([x, z]): Point => [x, z - thickness - FLUSH]);
  const foot = Math.min(...under.map((p) => p[1]));
  const whole = [...pieces(punch.section), ...holder(punch.section, height)];
  return {
    punch: cutBack(whole, horns).map(({ shape, back }) => ({
      shape: grown(shape, margin),
      behind: grown(mirrored(shape), margin),
      back,
    })),
    ram: grown(rectangle(-half, height, half, height + TOOL_DEPTH), margin),
    die: pieces(under).map((p) => widened(p, margin)),
    bed: widened(rectangle(-press.bed.half, foot - TOOL_DEPTH, press.bed.half, foot), margin),
    sectioned: die.sectioned,
    bars: [
      rectangle(-FLATTENING_BAR, 0, FLATTENING_BAR, TOOL_DEPTH),
      rectangle(-FLATTENING_BAR, -TOOL_DEPTH, FLATTENING_BAR, -thickness - FLUSH),
    ],
  };
}

/** A section in the bands that horns part it into. */
function cutBack(
  whole: readonly Convex[],
  horns: Horns | null,
): readonly { readonly shape: Convex; readonly back: number }[] {
  if (horns === null) return whole.map((shape) => ({ shape, back: 0 }));
  const { foot, height, reach } = horns;
  const bands = [
    { from: -Infinity, to: foot, back: 0 },
    { from: foot, to: height, back: reach },
    { from: height, to: Infinity, back: 0 },
  ];
  return bands.flatMap(({ from, to, back }) =>
    whole.map((s) => ({ shape: between(s, from, to), back })).filter((p) => p.shape.length > 2),
  );
}

/** What of a convex shape lies between two heights. */
function between(shape: Convex, low: number, high: number): Convex {
  return convexHull(
    shape.flatMap((p, i) => {
      const q = shape[(i + 1) % shape.length] as Point;
      const crossed = [low, high].flatMap((z): readonly Point[] =>
        p[1] < z === q[1] < z || !Number.isFinite(z)
          ? []
          : [[p[0] + ((q[0] - p[0]) * (z - p[1])) / (q[1] - p[1]), z]],
      );
      return [...(p[1] >= low && p[1] <= high ? [p] : []), ...crossed];
    }),
  );
}

/** What holds the punch: as wide as its top, up to the ram. */
function holder(section: readonly Point[], height: number): readonly Convex[] {
  const top = Math.max(...section.map((p) => p[1]));
  const xs = section.filter((p) => p[1] > top - 1e-6).map((p) => p[0]);
  return top < height ? [rectangle(Math.min(...xs), top, Math.max(...xs), height)] : [];
}

const mirrored = (shape: Convex): Convex => shape.map(([x, z]): Point => [-x, z]).toReversed();

/** A section in convex pieces, counter-clockwise whichever way it was written. */
function pieces(section: readonly Point[]): readonly Convex[] {
  const area = section.reduce((s, p, i) => {
    const q = section[(i + 1) % section.length] as Point;
    return s + p[0] * q[1] - q[0] * p[1];
  }, 0);
  return convexPieces(area < 0 ? section.toReversed() : section);
}

/** Wider to both sides, not higher: the sheet lies on it. */
function widened(shape: Convex, by: number): Convex {
  const middle = shape.reduce((s, p) => s + p[0], 0) / shape.length;
  return shape.map(([x, z]): Point => [x + Math.sign(x - middle) * by, z]);
}
