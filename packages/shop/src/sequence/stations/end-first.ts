import type { Point } from '@tinwright/core';
import { type Convex, meet, meetsOnWay, rectangle } from '../../sweep/polygon.js';
import { OUT } from './out.js';
import type { PunchAndRam, UnderPunch } from './press-access.js';
import type { Interval } from './stretches.js';

const SLIDES = [0, 2, 4, 6, 8, 10]; // mm the part is pushed along the line first
const STEP = Math.PI / 360; // of a tilt
const MOST = Math.PI / 4;

/**
 * True when a part comes off a punch with horns one end first: pushed along the line, then that end let down about the foot of
 * the other, which is drawn out sideways. What reaches over the feet is looked at along the line, as wide as it is under
 * each piece of the punch; the sheet beside the line goes down from the point wherever that stands.
 * @param stand where the punch stands, from foot to foot
 */
export function comesOffEndFirst(
  parts: readonly UnderPunch[],
  tools: PunchAndRam,
  [from, to]: Interval,
): boolean {
  const off = parts.filter((p) => !p.flat);
  const middle = (from + to) / 2;
  // the end that stays up is the left one, or mirrored, the right one
  return [1, -1].some((way) => {
    const seen = ([a, b]: Interval): Interval =>
      way === 1 ? [a - middle, b - middle] : [middle - b, middle - a];
    const pairs = [...tools.punch, { shape: tools.ram, back: -OUT }].flatMap(({ shape, back }) => {
      const own = seen([from + back, to - back]);
      return own[1] <= own[0] ? [] : pairsWith(shape, own, off, seen);
    });
    return lowered(pairs, seen([from, to])[0]);
  });
}

/** A piece of the part and one of the punch, seen across the line: along it and up. */
interface Pair {
  readonly piece: Convex;
  readonly still: Convex;
}

function pairsWith(
  shape: Convex,
  stand: Interval,
  parts: readonly UnderPunch[],
  seen: (y: Interval) => Interval,
): readonly Pair[] {
  const wide: Interval = [Math.min(...shape.map((p) => p[0])), Math.max(...shape.map((p) => p[0]))];
  const highs = shape.map((p) => p[1]);
  const still = rectangle(stand[0], Math.min(...highs), stand[1], Math.max(...highs));
  return parts.flatMap(({ section, y }): readonly Pair[] => {
    const own = heights(section, wide);
    const along = seen(y);
    return own === null ? [] : [{ piece: rectangle(along[0], own[0], along[1], own[1]), still }];
  });
}

/** How low and high a section is between two distances from the line; null where it is not. */
function heights(section: Convex, [a, b]: Interval): Interval | null {
  const zs = section.flatMap((p, i) => {
    const q = section[(i + 1) % section.length] as Point;
    const crossed = [a, b].flatMap((x) =>
      p[0] < x === q[0] < x ? [] : [p[1] + ((q[1] - p[1]) * (x - p[0])) / (q[0] - p[0])],
    );
    return [...(p[0] >= a && p[0] <= b ? [p[1]] : []), ...crossed];
  });
  return zs.length === 0 ? null : [Math.min(...zs), Math.max(...zs)];
}

/** @param end of the punch whose foot the part turns about */
function lowered(pairs: readonly Pair[], end: number): boolean {
  return SLIDES.some((by) => {
    if (pairs.some(({ piece, still }) => meetsOnWay(piece, by, 0, still))) return false;
    for (let turn = 0; turn <= MOST; turn += STEP) {
      const now = pairs.map(({ piece, still }) => ({ piece: tilted(piece, by, end, turn), still }));
      if (now.some(({ piece, still }) => meet(piece, still))) return false;
      if (now.every(({ piece, still }) => !meetsOnWay(piece, -OUT, 0, still))) return true;
    }
    return false;
  });
}

/** Pushed along, then turned down about the end of the point at the left. */
function tilted(shape: Convex, by: number, end: number, turn: number): Convex {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return shape.map(([x, z]): Point => {
    const u = x + by - end;
    return [end + c * u + s * z, -s * u + c * z];
  });
}
