import { type Box, isArc, type Loop, type Point, type Segment, segments } from '@tinwright/core';
import { boxOf, contains, corner, loopBox, reach, segmentDistance } from '@tinwright/core/internal';
import { type NestPart, partOf } from './ask.js';
import type { Nest, NestedSheet, NestPiece } from './result.js';

/** Something wrong with a nest: what, which pieces, and how far apart they are where that is the matter, mm. */
export interface NestFlaw {
  readonly code: 'overlap' | 'too-close' | 'off-sheet' | 'mirrored' | 'turned-against-grain' | 'quantity';
  readonly sheet: string;
  readonly pieces: readonly string[];
  readonly value: number;
  readonly limit: number;
}

/** Rounding allowed on distances, mm. */
const ROUNDING = 1e-6;

/**
 * Hold a nest against its parts with exact distances between lines and arcs: nothing overlaps or comes nearer than the
 * spacing, or the kerf where one cut serves both, every piece lies on the usable sheet and no nearer to its edge than asked, none is mirrored or turned
 * against the grain, and each part is there as often as asked, those reported missing included.
 */
export function verifyNest(nest: Nest, parts: readonly NestPart[]): readonly NestFlaw[] {
  const flaws = nest.sheets.flatMap((sheet) => {
    const laid = sheet.pieces.map((piece) => lay(piece, partOf(parts, piece)));
    return [...pairFlaws(nest, sheet, laid), ...laid.flatMap((one) => pieceFlaws(nest, sheet, one))];
  });
  return [...flaws, ...parts.flatMap((part) => countFlaws(nest, part))];
}

interface LaidPiece {
  readonly piece: NestPiece;
  readonly part: NestPart;
  readonly outline: Loop;
  readonly holes: readonly Loop[];
  readonly sides: readonly Segment[];
  readonly boxes: readonly Box[];
  readonly box: Box;
}

function lay(piece: NestPiece, part: NestPart): LaidPiece {
  const [a, b, c, d, e, f] = piece.matrix;
  const at = ([x, y]: Point): Point => [a * x + c * y + e, b * x + d * y + f];
  const moved = (loop: Loop): Loop => loop.map((v) => ({ at: at(v.at), bulge: v.bulge }));
  const outline = moved(part.outline);
  const holes = part.holes.map(moved);
  const sides = [outline, ...holes].flatMap(segments);
  const boxes = sides.map((s) => boxOf(reach(s)));
  return { piece, part, outline, holes, sides, boxes, box: loopBox(outline) };
}

const apart = (a: Box, b: Box): number =>
  Math.max(a.min[0] - b.max[0], b.min[0] - a.max[0], a.min[1] - b.max[1], b.min[1] - a.max[1]);

function pairFlaws(nest: Nest, sheet: NestedSheet, laid: readonly LaidPiece[]): readonly NestFlaw[] {
  const byWest = laid.toSorted((a, b) => a.box.min[0] - b.box.min[0]);
  return byWest.flatMap((one, i) => {
    const flaws: NestFlaw[] = [];
    for (let j = i + 1; j < byWest.length; j++) {
      const other = byWest[j] as LaidPiece;
      if (other.box.min[0] > one.box.max[0] + nest.spacing) break;
      if (apart(one.box, other.box) > nest.spacing) continue;
      const value = distanceBetween(one, other, nest.spacing);
      if (value >= nest.spacing - ROUNDING) continue;
      const limit = cutTogether(nest, one, other) ? nest.kerf : nest.spacing;
      if (value >= limit - ROUNDING) continue;
      const pieces = [one.piece.id, other.piece.id];
      flaws.push({
        code: value <= 0 ? 'overlap' : 'too-close',
        sheet: sheet.name,
        pieces,
        value,
        limit,
      });
    }
    return flaws;
  });
}

/** Do straight sides of two outlines run a kerf apart for as long as one cut may serve both? */
function cutTogether({ kerf, commonCuts: least }: Nest, one: LaidPiece, other: LaidPiece): boolean {
  if (least === undefined) return false;
  return segments(one.outline).some((s) =>
    segments(other.outline).some((t) => {
      if (isArc(s) || isArc(t)) return false;
      const length = Math.hypot(s.to[0] - s.from[0], s.to[1] - s.from[1]);
      const along = ([x, y]: Point) =>
        ((x - s.from[0]) * (s.to[0] - s.from[0]) + (y - s.from[1]) * (s.to[1] - s.from[1])) / length;
      const out = ([x, y]: Point) =>
        ((x - s.from[0]) * (s.to[1] - s.from[1]) - (y - s.from[1]) * (s.to[0] - s.from[0])) / length;
      const level = [t.from, t.to].every((p) => Math.abs(out(p) - kerf) < ROUNDING);
      return level && Math.min(length, along(t.from)) - Math.max(0, along(t.to)) >= least - ROUNDING;
    }),
  );
}

/** Distance between the material of two pieces up to `far`, beyond which it does not matter; 0 where they overlap. */
function distanceBetween(one: LaidPiece, other: LaidPiece, far: number): number {
  const least = sidesApart(one, other, far);
  if (least <= 0) return 0;
  const inside = (p: LaidPiece, q: LaidPiece) => {
    const point = (p.outline[0] as Loop[number]).at;
    return contains(q.outline, point) && !q.holes.some((h) => contains(h, point));
  };
  return inside(one, other) || inside(other, one) ? 0 : least;
}

function sidesApart(
  one: Pick<LaidPiece, 'sides' | 'boxes'>,
  other: Pick<LaidPiece, 'sides' | 'boxes'>,
  far: number,
): number {
  let least = Infinity;
  one.sides.forEach((s, i) => {
    const box = one.boxes[i] as Box;
    other.sides.forEach((t, j) => {
      if (apart(box, other.boxes[j] as Box) > Math.min(far, least)) return;
      least = Math.min(least, segmentDistance(s, t));
    });
  });
  return least;
}

function pieceFlaws(nest: Nest, sheet: NestedSheet, one: LaidPiece): readonly NestFlaw[] {
  const { stock } = sheet;
  const flaw = (code: NestFlaw['code'], value: number, limit: number): NestFlaw => ({
    code,
    sheet: sheet.name,
    pieces: [one.piece.id],
    value,
    limit,
  });
  const [a, b, c, d] = one.piece.matrix;
  const rigid =
    Math.abs(a * d - b * c - 1) < 1e-9 &&
    Math.abs(a * c + b * d) < 1e-9 &&
    Math.abs(a * a + b * b - 1) < 1e-9;
  const room = Math.min(
    one.box.min[0] - stock.trim.west,
    one.box.min[1] - stock.trim.south,
    stock.x - stock.trim.east - one.box.max[0],
    stock.y - stock.trim.north - one.box.max[1],
  );
  const edge = stock.outline === null ? room : Math.min(room, toOutline(stock.outline, one));
  const against =
    one.part.grain !== null &&
    stock.grain !== null &&
    Math.abs(one.part.grain === stock.grain ? b : a) > 1e-9;
  return [
    ...(rigid ? [] : [flaw('mirrored', a * d - b * c, 1)]),
    ...(edge < nest.edge - ROUNDING ? [flaw('off-sheet', edge, nest.edge)] : []),
    ...(against ? [flaw('turned-against-grain', (Math.atan2(b, a) * 180) / Math.PI, 0)] : []),
  ];
}

/** Distance from a piece to the edge of an offcut; −Infinity where it is not on it. */
function toOutline(corners: readonly Point[], one: LaidPiece): number {
  const loop: Loop = corners.map(([x, y]) => corner(x, y));
  if (!contains(loop, (one.outline[0] as Loop[number]).at)) return -Infinity;
  const sides = segments(loop);
  return sidesApart(one, { sides, boxes: sides.map((s) => boxOf(reach(s))) }, Infinity);
}

function countFlaws(nest: Nest, part: NestPart): readonly NestFlaw[] {
  const laid = nest.sheets.flatMap((s) => s.pieces).filter((p) => p.part === part.part);
  const missing = nest.missing.filter((m) => m.part === part.part).reduce((sum, m) => sum + m.count, 0);
  const twice = new Set(laid.map((p) => p.id)).size !== laid.length;
  if (laid.length + missing === part.quantity && !twice) return [];
  const value = laid.length + missing;
  return [{ code: 'quantity', sheet: '', pieces: [part.part], value, limit: part.quantity }];
}
