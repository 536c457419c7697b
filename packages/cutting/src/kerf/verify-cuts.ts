import { type Box, isArc, type Loop, type Point, type Segment, segments } from '@tinwright/core';
import { arcOf, boxOf, distanceToSegment, loopBox, reach, segmentDistance } from '@tinwright/core/internal';
import { type NestPart, partOf } from '../nest/ask.js';
import type { NestedSheet, NestPiece } from '../nest/result.js';
import type { Contour } from './contour.js';

/** Something wrong with the cuts of a sheet: which piece, where, and by how much, mm. */
export interface CutFlaw {
  /** Metal that still holds a piece, or a cut nearer to a line than half a kerf. */
  readonly code: 'holds' | 'into-part';
  readonly piece: string;
  readonly at: Point;
  readonly value: number;
}

/** Rounding allowed, mm. */
const ROUNDING = 1e-5;

interface Boxed {
  readonly side: Segment;
  readonly box: Box;
}

/**
 * Hold the cuts of a sheet together, with code of its own: every contour is run along from end to end by some cut,
 * its own or a neighbour's, micro-joints aside, and no cut, ways in and out with it, comes nearer to a part than half a kerf.
 * A round at a corner may be missing where both its ends are cut: up to 120 degrees those take the metal.
 */
export function verifyCuts(
  { pieces }: NestedSheet,
  parts: readonly NestPart[],
  contours: readonly Contour[],
  kerf: number,
): readonly CutFlaw[] {
  const cuts = contours.flatMap(cutSides).map(boxed);
  const lines = pieces.flatMap((p) => linesOf(p, partOf(parts, p)));
  return [
    ...contours.flatMap((c) => standing(c, cuts, kerf)),
    ...contours.flatMap(({ piece, ...c }) =>
      [...cutSides(c), c.leadIn, c.leadOut].flatMap((side) =>
        side === null
          ? []
          : into(side, lines, kerf).map((value) => flaw('into-part', piece, side.from, value)),
      ),
    ),
  ];
}

const flaw = (code: CutFlaw['code'], piece: string, at: Point, value: number): CutFlaw => ({
  code,
  piece,
  at,
  value,
});

const boxed = (side: Segment): Boxed => ({ side, box: boxOf(reach(side)) });

const cutSides = ({ runs, loop }: Pick<Contour, 'runs' | 'loop'>): readonly Segment[] =>
  runs?.flat() ?? segments(loop);

function linesOf({ matrix: [a, b, c, d, e, f] }: NestPiece, part: NestPart) {
  const moved = (loop: Loop): Loop =>
    loop.map(({ at: [x, y], bulge }) => ({ at: [a * x + c * y + e, b * x + d * y + f], bulge }));
  return [part.outline, ...part.holes].map((loop) => {
    const own = moved(loop);
    return { box: loopBox(own), sides: segments(own).map(boxed) };
  });
}

/** By how much a cut runs into a line. */
function into(side: Segment, lines: ReturnType<typeof linesOf>, kerf: number): readonly number[] {
  const { box } = boxed(side);
  const nearest = lines
    .filter((l) => apart(l.box, box) < kerf)
    .flatMap((l) => l.sides.filter((s) => apart(s.box, box) < kerf))
    .reduce((least, s) => Math.min(least, segmentDistance(s.side, side)), Infinity);
  return nearest < kerf / 2 - ROUNDING ? [kerf / 2 - nearest] : [];
}

const apart = (a: Box, b: Box): number =>
  Math.max(a.min[0] - b.max[0], b.min[0] - a.max[0], a.min[1] - b.max[1], b.min[1] - a.max[1]);

/** Sides of a contour, or what of them, along which nothing has cut. */
function standing({ piece, loop }: Contour, cuts: readonly Boxed[], kerf: number): readonly CutFlaw[] {
  return segments(loop).flatMap((side) => {
    const { box } = boxed(side);
    const near = cuts.filter((c) => apart(c.box, box) < kerf);
    const cut = (p: Point) => near.some((c) => distanceToSegment(p, c.side) < ROUNDING);
    if (!isArc(side)) {
      const value = uncut(
        side,
        near.map((n) => n.side),
      );
      return value > ROUNDING ? [flaw('holds', piece, side.from, value)] : [];
    }
    const { radius, sweep } = arcOf(side);
    const corner = side.bulge < 0 && radius < kerf / 2 + ROUNDING && sweep > -2.1;
    const whole = corner ? cut(side.from) && cut(side.to) : onArc(side).every(cut);
    return whole ? [] : [flaw('holds', piece, side.from, radius * Math.abs(sweep))];
  });
}

/** Length of a straight side that no straight cut runs along. */
function uncut({ from: [x, y], to: far }: Segment, cuts: readonly Segment[]): number {
  const length = Math.hypot(far[0] - x, far[1] - y);
  const [ux, uy] = [(far[0] - x) / length, (far[1] - y) / length];
  const level = cuts.filter(
    (c) => !isArc(c) && [c.from, c.to].every((p) => Math.abs((p[0] - x) * uy - (p[1] - y) * ux) < ROUNDING),
  );
  const spans = level
    .map(({ from, to }) => [from, to].map((p) => (p[0] - x) * ux + (p[1] - y) * uy))
    .map((ends) => [Math.min(...ends), Math.max(...ends)] as const)
    .sort((a, b) => a[0] - b[0]);
  let [done, left] = [0, 0];
  for (const [begin, end] of spans) {
    left += Math.max(0, Math.min(length, begin) - done);
    done = Math.max(done, Math.min(length, end));
  }
  return left + length - done;
}

/** Five points of an arc. */
function onArc(side: Segment): readonly Point[] {
  const { centre, radius, start, sweep } = arcOf(side);
  return [0, 0.25, 0.5, 0.75, 1].map((t): Point => {
    const angle = start + sweep * t;
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
  });
}
