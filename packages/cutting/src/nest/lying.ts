import { type Box, type Loop, type Point, type Segment, segments } from '@tinwright/core';
import { boxOf, contains, corner, loopBox, reach, segmentDistance } from '@tinwright/core/internal';
import type { NestPart } from './ask.js';
import { type EdgePair, edgesOf, facing, inCommon, type StraightEdge } from './facing.js';
import type { NestedSheet, NestPiece } from './result.js';

/** A piece as it lies on its sheet. */
export interface NestedPiece {
  readonly piece: NestPiece;
  readonly part: NestPart;
  readonly outline: Loop;
  readonly holes: readonly Loop[];
  readonly sides: readonly Side[];
  /** Straight ones of the outline that are long enough to have in common. */
  readonly edges: readonly StraightEdge[];
  readonly box: Box;
}

interface Side {
  readonly side: Segment;
  readonly box: Box;
}

/** @param least shortest edge that counts, mm */
export function lie(piece: NestPiece, part: NestPart, least: number): NestedPiece {
  const [a, b, c, d, e, f] = piece.matrix;
  const moved = (loop: Loop): Loop =>
    loop.map(({ at: [x, y], bulge }) => ({ at: [a * x + c * y + e, b * x + d * y + f], bulge }));
  const outline = moved(part.outline);
  const holes = part.holes.map(moved);
  const sides = [outline, ...holes].flatMap(segments).map(sideOf);
  return { piece, part, outline, holes, sides, edges: edgesOf(outline, least), box: loopBox(outline) };
}

const sideOf = (side: Segment): Side => ({ side, box: boxOf(reach(side)) });

/** The piece somewhere else. */
export function movedBy({ piece, part }: NestedPiece, [dx, dy]: Point, least: number): NestedPiece {
  const [a, b, c, d, e, f] = piece.matrix;
  return lie({ ...piece, matrix: [a, b, c, d, e + dx, f + dy] }, part, least);
}

/** How far apart two boxes are at least; below 0 where they overlap. */
export const apart = (a: Box, b: Box): number =>
  Math.max(a.min[0] - b.max[0], b.min[0] - a.max[0], a.min[1] - b.max[1], b.min[1] - a.max[1]);

/** How the edges of two pieces face each other. */
export const facings = (one: NestedPiece, other: NestedPiece): readonly EdgePair[] =>
  one.edges.flatMap((e) => other.edges.flatMap((o) => facing(e, o) ?? []));

/** Have two pieces an edge in common? */
export const sharing = (one: NestedPiece, other: NestedPiece, kerf: number, least: number): boolean =>
  facings(one, other).some((f) => inCommon(f, [0, 0], kerf) >= least);

/** Rounding of distances, mm. */
const ROUNDING = 1e-8;

/** Is the metal of two pieces that far apart? */
export function clear(one: NestedPiece, other: NestedPiece, limit: number): boolean {
  if (apart(one.box, other.box) >= limit) return true;
  return (
    !nearer(one.sides, other.sides, limit) &&
    !holds(one, (other.outline[0] as Loop[number]).at) &&
    !holds(other, (one.outline[0] as Loop[number]).at)
  );
}

function nearer(some: readonly Side[], others: readonly Side[], limit: number): boolean {
  return some.some((s) =>
    others.some((o) => apart(s.box, o.box) < limit && segmentDistance(s.side, o.side) < limit - ROUNDING),
  );
}

const holds = ({ outline, holes }: NestedPiece, p: Point): boolean =>
  contains(outline, p) && !holes.some((h) => contains(h, p));

/** Does a piece with that box lie on the usable sheet, that far from its edge? It is only laid where the sheet is no rectangle. */
export function liesOn(
  { stock: { trim, x, y, outline } }: NestedSheet,
  box: Box,
  laid: () => NestedPiece,
  edge: number,
): boolean {
  const room = Math.min(
    box.min[0] - trim.west,
    box.min[1] - trim.south,
    x - trim.east - box.max[0],
    y - trim.north - box.max[1],
  );
  if (room < edge - ROUNDING) return false;
  if (outline === null) return true;
  const around: Loop = outline.map(([px, py]) => corner(px, py));
  const one = laid();
  return (
    contains(around, (one.outline[0] as Loop[number]).at) &&
    !nearer(one.sides, segments(around).map(sideOf), edge)
  );
}
