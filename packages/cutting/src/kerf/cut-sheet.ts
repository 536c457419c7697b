import { type Loop, type Point, segments } from '@tinwright/core';
import { distanceToLoop, loopArea, segmentLength } from '@tinwright/core/internal';
import { type NestPart, partOf } from '../nest/ask.js';
import type { NestedSheet, NestPiece } from '../nest/result.js';
import { reversed } from '../outline/around.js';
import { ownSides, type RunsLeft, runsLeft } from './common-cut.js';
import type { Contour, CutStyle } from './contour.js';
import type { CutRemark } from './cut-findings.js';
import { type Start, startOf } from './lead.js';
import { offsetLoop } from './offset-loop.js';
import { inOrder } from './order.js';
import { middleOf } from './run.js';
import { edgeOf, scrapOf } from './scrap.js';
import { tiesOf } from './ties.js';

/** The cuts of a sheet in their order, and what to know about them. */
export interface SheetCuts {
  readonly contours: readonly Contour[];
  readonly remarks: readonly CutRemark[];
}

/** A cut before it has a beginning: what it should go round, and how it goes. */
interface Raw {
  readonly piece: string;
  readonly kind: Contour['kind'];
  readonly drawn: Loop;
  readonly path: Loop;
}

/**
 * What the torch does on a sheet: every cut moved half a kerf off its line to the side of the scrap, outlines clockwise
 * and holes counter-clockwise so that the square side of the cut stays on the part (a college course's slides), lead-ins
 * and lead-outs on the scrap, pieces in the holes of others first, holes before outlines, then the nearest next.
 */
export function cutSheet(sheet: NestedSheet, parts: readonly NestPart[], style: CutStyle): SheetCuts {
  const made = sheet.pieces.map((piece) => rawCuts(piece, partOf(parts, piece), style.kerf));
  const raws = inOrder(
    made.flatMap((m) => m.raws),
    style.order,
  );
  const scrap = scrapOf(
    raws.map((r) => r.drawn),
    edgeOf(sheet),
    style.kerf,
  );
  const common = commonOf(raws, style);
  const begun = raws.map((raw, at): Begun => {
    const left = common?.left[at] ?? null;
    const of = { piece: raw.piece, kind: raw.kind };
    const tied = (loop: Loop) => {
      if (raw.kind === 'hole') return [];
      const sides = segments(loop);
      return tiesOf(common?.own(sides, at) ?? sides, style.ties, style.tieWidth);
    };
    if (left !== null) {
      const ties = tied(raw.path);
      const contour = { ...of, loop: raw.path, leadIn: null, leadOut: null, ties, runs: left.runs };
      return { contour, remarks: [...bevelled(raw.piece, left), ...fewTies(contour, style)] };
    }
    const share = raw.kind === 'outline' ? Infinity : HOLE_SHARE * widthOf(raw.path);
    const wanted = { ...style, leadLength: Math.min(style.leadLength, share) };
    const start = startOf(raw.path, wanted, (p) => scrap(p, at));
    const { loop, leadIn, leadOut } = start;
    const contour: Contour = { ...of, loop, leadIn, leadOut, ties: tied(loop) };
    const few = common === null ? [] : fewTies(contour, style);
    return { contour, remarks: [...shortLead(raw.piece, start, wanted), ...few] };
  });
  return {
    contours: begun.map((b) => b.contour),
    remarks: [
      ...shortEdges(sheet, parts, style.kerf),
      ...made.flatMap((m) => m.remarks),
      ...begun.flatMap((b) => b.remarks),
    ],
  };
}

interface Begun {
  readonly contour: Contour;
  readonly remarks: readonly CutRemark[];
}

/** What outlines leave to each other, in the order they are cut, and the sides that are theirs alone. */
function commonOf(raws: readonly Raw[], { kerf, commonCuts: least }: CutStyle) {
  if (least === undefined || kerf === 0) return null;
  const outlines = raws.map((r) => (r.kind === 'outline' ? r.path : []));
  const drawn = raws.map((r) => r.drawn);
  return { left: runsLeft(outlines, drawn, { kerf, least }), own: ownSides(outlines, least) };
}

/** Cut from the other side, an edge has the slanting side of the cut. */
function bevelled(piece: string, { spared }: RunsLeft): readonly CutRemark[] {
  const longest = spared.reduce((a, b) => (segmentLength(b) > segmentLength(a) ? b : a));
  const value = spared.reduce((sum, s) => sum + segmentLength(s), 0);
  return [{ code: 'common-cut', piece, at: middleOf(longest), value, limit: 0 }];
}

/** Micro-joints that find no room beside what is cut for two. */
function fewTies({ piece, kind, loop, ties }: Contour, { ties: asked }: CutStyle): readonly CutRemark[] {
  if (kind === 'hole' || ties.length >= asked) return [];
  const { at } = loop[0] as Loop[number];
  return [{ code: 'ties-few', piece, at, value: ties.length, limit: asked }];
}

function shortLead(
  piece: string,
  { loop, length }: Start,
  { lead, leadLength }: CutStyle,
): readonly CutRemark[] {
  if (lead === 'none' || length === leadLength) return [];
  const { at } = loop[0] as Loop[number];
  return [{ code: length === 0 ? 'lead-none' : 'lead-short', piece, at, value: length, limit: leadLength }];
}

/** The shortest edge of each outline that is shorter than the cut is wide, on the first piece of its part. */
function shortEdges(sheet: NestedSheet, parts: readonly NestPart[], kerf: number): readonly CutRemark[] {
  const firsts = sheet.pieces.filter((p, i) => sheet.pieces.findIndex((q) => q.part === p.part) === i);
  return firsts.flatMap((piece): readonly CutRemark[] => {
    const sides = segments(partOf(parts, piece).outline);
    const shortest = sides.reduce((a, b) => (segmentLength(b) < segmentLength(a) ? b : a));
    const value = segmentLength(shortest);
    if (value >= kerf - 1e-6) return [];
    const [a, b, c, d, e, f] = piece.matrix;
    const [x, y] = shortest.from;
    return [
      {
        code: 'edge-under-kerf',
        piece: piece.id,
        at: [a * x + c * y + e, b * x + d * y + f],
        value,
        limit: kerf,
      },
    ];
  });
}

function rawCuts(
  piece: NestPiece,
  part: NestPart,
  kerf: number,
): { raws: readonly Raw[]; remarks: readonly CutRemark[] } {
  const [a, b, c, d, e, f] = piece.matrix;
  const laid = (loop: Loop): Loop =>
    loop.map(({ at: [x, y], bulge }) => ({ at: [a * x + c * y + e, b * x + d * y + f], bulge }));
  const remarks: CutRemark[] = [];
  const raws: Raw[] = [];
  const add = (kind: Raw['kind'], loop: Loop, by: number) => {
    const drawn = laid(loop);
    const paths = offsetLoop(drawn, by).filter((p) => loopArea(p) > 0);
    const path = paths.reduce<Loop | undefined>(
      (best, p) => (best === undefined || loopArea(p) > loopArea(best) ? p : best),
      undefined,
    );
    if (path === undefined)
      remarks.push({
        code: 'hole-closes',
        piece: piece.id,
        at: (drawn[0] as Loop[number]).at,
        value: widthOf(drawn),
        limit: kerf,
      });
    else raws.push({ piece: piece.id, kind, drawn, path: kind === 'outline' ? reversed(path) : path });
    const missed = path && unreached(drawn, path, Math.abs(by));
    if (missed)
      remarks.push({
        code: 'slot-closes',
        piece: piece.id,
        at: missed,
        value: 2 * distanceToLoop(missed, path),
        limit: kerf,
      });
  };
  for (const hole of part.holes) add('hole', hole, -kerf / 2);
  add('outline', part.outline, kerf / 2);
  return { raws, remarks };
}

/** Share of a hole's width a way in may have: from its middle at most (from memory: an estimate). */
const HOLE_SHARE = 0.45;

/** A corner of a drawn line that a torch cannot come near: much further from its path than a sharp corner leaves. */
function unreached(drawn: Loop, path: Loop, by: number): Point | undefined {
  return drawn.map((v) => v.at).find((p) => by > 0 && distanceToLoop(p, path) > 3 * by);
}

/** The lesser extent of a hole, mm. */
function widthOf(loop: Loop): number {
  const xs = loop.map((v) => v.at[0]);
  const ys = loop.map((v) => v.at[1]);
  return Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}
