import type { Point } from '@tinwright/core';
import { convexPieces } from '@tinwright/core/internal';
import type { Die, Press, Punch } from '../machines/shop.js';
import { type Convex, grown, rectangle } from '../sweep/polygon.js';
import { FLUSH, TOOL_DEPTH } from './margin.js';

/**
 * Sections of a press brake as convex pieces, seen along the line: x across, z up from the point of the punch, where
 * the inside of the bend lies. The die's top touches the sheet from below at the start.
 */
export interface PressTools {
  readonly punch: readonly Convex[];
  /** The punch as the held side sees it, once that side is mirrored onto the free one. */
  readonly punchBehind: readonly Convex[];
  readonly ram: Convex;
  readonly die: readonly Convex[];
  /** The die stands only under the punch. */
  readonly sectioned: boolean;
  /** Flat bars that close hems, over the sheet and under it. */
  readonly bars: readonly [Convex, Convex];
}

/** Half the width of a flattening bar, mm. Judgement. */
export const FLATTENING_BAR = 25;

export function pressTools(
  press: Press,
  punch: Punch,
  die: Die,
  thickness: number,
  margin: number,
): PressTools {
  const { half, height } = press.ram;
  const under = die.section.map(([x, z]): Point => [x, z - thickness - FLUSH]);
  const whole = [...pieces(punch.section), ...holder(punch.section, height)];
  return {
    punch: whole.map((p) => grown(p, margin)),
    punchBehind: whole.map((p) => grown(mirrored(p), margin)),
    ram: grown(rectangle(-half, height, half, height + TOOL_DEPTH), margin),
    die: pieces(under).map((p) => widened(p, margin)),
    sectioned: die.sectioned,
    bars: [
      rectangle(-FLATTENING_BAR, 0, FLATTENING_BAR, TOOL_DEPTH),
      rectangle(-FLATTENING_BAR, -TOOL_DEPTH, FLATTENING_BAR, -thickness - FLUSH),
    ],
  };
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
