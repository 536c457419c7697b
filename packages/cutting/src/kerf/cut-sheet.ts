import { type Loop, segments } from '@tinwright/core';
import { lazy, segmentLength } from '@tinwright/core/internal';
import { type NestPart, partOf } from '../nest/ask.js';
import type { NestedSheet } from '../nest/result.js';
import { inCommon, ownSides, type RunsLeft, runsLeft } from './common-cut.js';
import type { Contour, CutStyle } from './contour.js';
import type { CutRemark } from './cut-findings.js';
import { type Start, startOf } from './lead.js';
import { inOrder, type Waits } from './order.js';
import { type Raw, rawCuts, widthOf } from './raw-cuts.js';
import { middleOf } from './run.js';
import { edgeOf, scrapOf } from './scrap.js';
import { tiesOf } from './ties.js';

/** The cuts of a sheet in their order, and what to know about them. */
export interface SheetCuts {
  readonly contours: readonly Contour[];
  readonly remarks: readonly CutRemark[];
}

/**
 * What the torch does on a sheet: every cut moved half a kerf off its line to the side of the scrap, outlines clockwise
 * and holes counter-clockwise so that the square side of the cut stays on the part (a college course's slides), lead-ins
 * and lead-outs on the scrap, pieces in the holes of others first, holes before outlines, then the nearest next.
 */
export function cutSheet(sheet: NestedSheet, parts: readonly NestPart[], style: CutStyle): SheetCuts {
  const made = sheet.pieces.map((piece) => rawCuts(piece, partOf(parts, piece), style.kerf));
  const all = made.flatMap((m) => m.raws);
  const scrap = scrapOf(
    all.map((r) => r.drawn),
    edgeOf(sheet),
    style.kerf,
  );
  const starts = new Map(
    all.map((raw, at) => [raw, lazy(() => startOf(raw.path, ledInto(raw, style), (p) => scrap(p, at)))]),
  );
  const begin = (raw: Raw) => (starts.get(raw) as () => Start)();
  const raws = inOrder(all, style.order, waitsOf(all, begin, style));
  const common = commonOf(raws, style);
  const begun = raws.map((raw, at): Begun => {
    const left = common?.left[at] ?? null;
    const of = { piece: raw.piece, kind: raw.kind };
    const tied = (loop: Loop) => {
      if (raw.kind === 'hole') return [];
      const sides = segments(loop);
      return tiesOf(common?.own(sides, at) ?? sides, style.ties, style.tieWidth + style.kerf); // both ends of a gap are as round as the torch
    };
    if (left !== null) {
      const ties = tied(raw.path);
      const contour = { ...of, loop: raw.path, leadIn: null, leadOut: null, ties, runs: left.runs };
      return { contour, remarks: [...bevelled(raw.piece, left), ...fewTies(contour, style)] };
    }
    const start = begin(raw);
    const { loop, leadIn, leadOut } = start;
    const contour: Contour = { ...of, loop, leadIn, leadOut, ties: tied(loop) };
    const few = common === null ? [] : fewTies(contour, style);
    return { contour, remarks: [...shortLead(raw.piece, start, ledInto(raw, style)), ...few] };
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

/** Share of a hole's width a way in may have: from its middle at most (from memory: an estimate). */
const HOLE_SHARE = 0.45;

/** The style with the way in that a cut may have at most. */
function ledInto({ kind, path }: Raw, style: CutStyle): CutStyle {
  const share = kind === 'outline' ? Infinity : HOLE_SHARE * widthOf(path);
  return { ...style, leadLength: Math.min(style.leadLength, share) };
}

/** Where cuts are common, an outline without room for a way in waits for a neighbour whose cut it can start from. */
function waitsOf(
  all: readonly Raw[],
  begin: (raw: Raw) => Start,
  { kerf, lead, commonCuts: least }: CutStyle,
): Waits {
  if (least === undefined || kerf === 0 || lead === 'none') return () => false;
  const outlines = all.filter((r) => r.kind === 'outline');
  const beside = new Map(
    outlines
      .filter((raw) => begin(raw).length === 0)
      .map((raw) => {
        const near = outlines.filter((o) => o !== raw && inCommon(raw.path, o.path, least));
        return [raw.piece, near.map((o) => o.piece)];
      }),
  );
  return (piece, cut) => !(beside.get(piece)?.some((p) => cut.has(p)) ?? true);
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
