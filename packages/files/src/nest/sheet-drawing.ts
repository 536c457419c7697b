import { type FlatPattern, type Loop, type Point, type Segment, segments } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { Contour, NestedSheet, NestPiece, SheetCuts } from '@tinwright/cutting';
import type { Drawing, DrawingLayer, Shape } from '../drawing.js';
import type { CutLayerName } from '../layers.js';
import { markShapes, punchShape, withinOutline } from '../table/mark-shapes.js';
import { runOf } from '../table/simple-curves.js';
import type { TableStyle } from '../table/style.js';

/** A part as it is marked: its flat pattern under the name the nest knows, and places of holes that are only punched. */
export interface NestFlat {
  readonly part: string;
  readonly flat: FlatPattern;
  readonly punched?: readonly Point[];
}

/**
 * A whole sheet, mm, origin at its lower left corner: as a table takes it, marks first, then every cut as way in,
 * contour, way out, in their order; or with its edge, layer by layer, to look at.
 */
export function sheetDrawing(
  sheet: NestedSheet,
  cuts: SheetCuts,
  flats: readonly NestFlat[],
  style: TableStyle,
  to: 'cut' | 'look-at',
): Drawing {
  const marks = (of: (piece: NestPiece, own: NestFlat, at: Place) => readonly Shape[]) =>
    sheet.pieces.flatMap((piece) => of(piece, flatOf(flats, piece), placeOf(piece)));
  const bends = (direction: 'up' | 'down') =>
    marks((_, { flat }, at) =>
      flat.bends
        .filter((b) => b.direction === direction)
        .map((b): Shape => ({ kind: 'line', from: at(b.line[0]), to: at(b.line[1]) })),
    );
  const note = to === 'cut' && style.note === 'full' ? sheetNote(sheet) : [];
  const texts = style.text === 'off' && to === 'cut' ? [] : marks((p, { flat }, at) => [label(p, flat, at)]);
  const marked: readonly DrawingLayer[] = [
    { name: 'BEND-UP', shapes: bends('up') },
    { name: 'BEND-DOWN', shapes: bends('down') },
    {
      name: 'WELD-MARK',
      shapes: marks((_, { flat }, at) => {
        const trim = withinOutline(flat.outline.map((v) => ({ ...v, at: at(v.at) })));
        return flat.marks
          .filter((m) => m.hole === null)
          .flatMap((m) => markShapes(at(m.at), style.marks, trim));
      }),
    },
    {
      name: 'SCRIBE',
      shapes: [
        ...(to === 'look-at' ? [{ kind: 'loop', loop: edgeOf(sheet) } as const] : []),
        ...marks((_, { punched = [] }, at) => punched.map((p) => punchShape(at(p)))),
      ],
    },
  ];
  const cut = cuts.contours.flatMap(cutRuns);
  const layers: readonly DrawingLayer[] = [
    ...marked,
    ...(to === 'cut' ? cut : (['LEAD', 'CUT'] as const).map((name) => together(cut, name))),
    { name: 'NOTE', shapes: [...texts, ...note] },
  ];
  return {
    title: sheet.name,
    layers: layers.filter((l) => l.shapes.length > 0 && !style.without.some((w) => w === l.name)),
    box: { min: [0, note.length > 0 ? -NOTE_BELOW - NOTE_HEIGHT : 0], max: [sheet.stock.x, sheet.stock.y] },
  };
}

/** A cut in the order a torch makes it. */
function cutRuns(contour: Contour): readonly DrawingLayer[] {
  const way = (s: Segment | null): DrawingLayer => ({ name: 'LEAD', shapes: s === null ? [] : [runOf(s)] });
  return [way(contour.leadIn), { name: 'CUT', shapes: contourShapes(contour) }, way(contour.leadOut)];
}

const together = (runs: readonly DrawingLayer[], name: CutLayerName): DrawingLayer => ({
  name,
  shapes: runs.filter((r) => r.name === name).flatMap((r) => r.shapes),
});

/** mm */
const NOTE_HEIGHT = 8;
const NOTE_BELOW = 4;

/** What the sheet is and how many pieces lie on it, below its lower edge. */
function sheetNote({ name, stock, pieces }: NestedSheet): readonly Shape[] {
  const text = `${name}: ${stock.material} T ${plainNumber(stock.thickness, 2)}, ${pieces.length} x`;
  return [{ kind: 'text', at: [0, -NOTE_BELOW - NOTE_HEIGHT], height: NOTE_HEIGHT, text }];
}

type Place = (p: Point) => Point;

function placeOf({ matrix: [a, b, c, d, e, f] }: NestPiece): Place {
  return ([x, y]) => [a * x + c * y + e, b * x + d * y + f];
}

function flatOf(flats: readonly NestFlat[], { part, id }: NestPiece): NestFlat {
  const found = flats.find((f) => f.part === part);
  if (found === undefined) throw new RangeError(`piece ${id}: no flat pattern of "${part}" given`);
  return found;
}

/** The sheet's edge. */
function edgeOf({ stock: { x, y, outline } }: NestedSheet): Loop {
  const corners = outline ?? [
    [0, 0],
    [x, 0],
    [x, y],
    [0, y],
  ];
  return corners.map((at) => ({ at: [at[0], at[1]], bulge: 0 }));
}

/** Width of a character over its height, of common sans-serif faces. */
const CHARACTER = 0.7;

/** The id of a piece in the middle of its first panel, as large as that takes, level on the sheet. */
function label({ id }: NestPiece, flat: FlatPattern, at: Place): Shape {
  const shape = (flat.panels[0]?.shape ?? []).map(at);
  const range = (axis: 0 | 1) => {
    const values = shape.map((p) => p[axis]);
    return [Math.min(...values), Math.max(...values)] as const;
  };
  const [[west, east], [south, north]] = [range(0), range(1)];
  const wide = CHARACTER * [...id].length;
  const height = Math.max(2, Math.min(8, (0.9 * (east - west)) / wide, 0.6 * (north - south)));
  const corner: Point = [(west + east - height * wide) / 2, (south + north - height) / 2];
  return { kind: 'text', at: corner, height, text: id };
}

/** A closed cut as one loop; one with micro-joints, or of which a neighbour's cut makes a part, as the runs that are left. */
function contourShapes({ loop, ties, runs }: Contour): readonly Shape[] {
  if (ties.length === 0 && runs === undefined) return [{ kind: 'loop', loop }];
  return (runs ?? [segments(loop)]).flatMap((run) => chained(run.flatMap((side) => cutShort(side, ties))));
}

/** Sides one after the other as open paths, so that a torch runs on through their corners. */
function chained(sides: readonly Segment[]): readonly Shape[] {
  const paths: Segment[][] = [];
  for (const side of sides) {
    const path = paths.at(-1);
    const end = path?.at(-1)?.to;
    if (path !== undefined && end !== undefined && same(end, side.from)) path.push(side);
    else paths.push([side]);
  }
  return paths.map(pathOf);
}

const same = (a: Point, b: Point) => a[0] === b[0] && a[1] === b[1];
const end = ({ to }: Segment) => ({ at: to, bulge: 0 });

function pathOf(sides: readonly Segment[]): Shape {
  const [only] = sides;
  if (sides.length === 1 && only?.bulge === 0) return runOf(only);
  const corners = sides.map(({ from, bulge }) => ({ at: from, bulge }));
  return { kind: 'path', path: [...corners, ...sides.slice(-1).map(end)] };
}

/** A side without the gaps that lie on it. */
function cutShort(side: Segment, ties: Contour['ties']): readonly Segment[] {
  const along = ([x, y]: Point) =>
    (x - side.from[0]) * (side.to[0] - side.from[0]) + (y - side.from[1]) * (side.to[1] - side.from[1]);
  const across = ([x, y]: Point) =>
    (x - side.from[0]) * (side.to[1] - side.from[1]) - (y - side.from[1]) * (side.to[0] - side.from[0]);
  const full = along(side.to);
  const on = ties
    .filter(
      ([a, b]) => side.bulge === 0 && Math.abs(across(a)) < 1e-6 * full && along(a) > 0 && along(b) < full,
    )
    .toSorted(([a], [b]) => along(a) - along(b));
  const stops: readonly Point[] = [side.from, ...on.flat(), side.to];
  if (on.length === 0) return [side];
  return Array.from(
    { length: stops.length / 2 },
    (_, k): Segment => ({ from: stops[2 * k] as Point, to: stops[2 * k + 1] as Point, bulge: 0 }),
  );
}
