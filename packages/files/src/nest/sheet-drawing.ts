import { type FlatPattern, type Loop, type Point, type Segment, segments } from '@tinwright/core';
import type { Contour, NestedSheet, NestPiece, SheetCuts } from '@tinwright/cutting';
import type { Drawing, DrawingLayer, Shape } from '../drawing.js';
import { type CutLayerName, LAYERS } from '../layers.js';
import { markShapes } from '../table/mark-shapes.js';
import { runOf } from '../table/simple-curves.js';
import type { TableStyle } from '../table/style.js';

/** A part as it is marked: its flat pattern under the name the nest knows. */
export interface NestFlat {
  readonly part: string;
  readonly flat: FlatPattern;
}

/** A whole sheet as a table takes it, or with its edge to look at. mm, origin at its lower left corner. */
export function sheetDrawing(
  sheet: NestedSheet,
  cuts: SheetCuts,
  flats: readonly NestFlat[],
  style: TableStyle,
  to: 'cut' | 'look-at',
): Drawing {
  const marks = (of: (piece: NestPiece, flat: FlatPattern, at: Place) => readonly Shape[]) =>
    sheet.pieces.flatMap((piece) => of(piece, flatOf(flats, piece), placeOf(piece)));
  const bends = (direction: 'up' | 'down') =>
    marks((_, flat, at) =>
      flat.bends
        .filter((b) => b.direction === direction)
        .map((b): Shape => ({ kind: 'line', from: at(b.line[0]), to: at(b.line[1]) })),
    );
  const holds: Readonly<Record<CutLayerName, readonly Shape[]>> = {
    'BEND-UP': bends('up'),
    'BEND-DOWN': bends('down'),
    'WELD-MARK': marks((_, flat, at) =>
      flat.marks.filter((m) => m.hole === null).flatMap((m) => markShapes(at(m.at), style.marks)),
    ),
    SCRIBE: to === 'look-at' ? [{ kind: 'loop', loop: edgeOf(sheet) }] : [],
    LEAD: cuts.contours.flatMap(({ leadIn, leadOut }) =>
      [leadIn, leadOut].flatMap((s) => (s === null ? [] : [runOf(s)])),
    ),
    CUT: cuts.contours.flatMap(contourShapes),
    NOTE: style.text === 'off' && to === 'cut' ? [] : marks((piece, flat, at) => [label(piece, flat, at)]),
  };
  const layers = LAYERS.map(({ name }): DrawingLayer => ({ name, shapes: holds[name] }))
    .filter((l) => l.shapes.length > 0)
    .filter((l) => !style.without.some((w) => w === l.name));
  return { title: sheet.name, layers, box: { min: [0, 0], max: [sheet.stock.x, sheet.stock.y] } };
}

type Place = (p: Point) => Point;

function placeOf({ matrix: [a, b, c, d, e, f] }: NestPiece): Place {
  return ([x, y]) => [a * x + c * y + e, b * x + d * y + f];
}

function flatOf(flats: readonly NestFlat[], { part, id }: NestPiece): FlatPattern {
  const found = flats.find((f) => f.part === part);
  if (found === undefined) throw new RangeError(`piece ${id}: no flat pattern of "${part}" given`);
  return found.flat;
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

/** The id of a piece in the middle of its first panel. */
function label({ id }: NestPiece, flat: FlatPattern, at: Place): Shape {
  const shape = flat.panels[0]?.shape ?? [];
  const middle = (axis: 0 | 1) =>
    (Math.min(...shape.map((p) => p[axis])) + Math.max(...shape.map((p) => p[axis]))) / 2;
  const height = Math.max(2, Math.min(8, (flat.blank.max[0] * 0.6) / id.length));
  const [x, y] = at([middle(0), middle(1)]);
  return { kind: 'text', at: [x - 0.35 * height * id.length, y - height / 2], height, text: id };
}

/** A closed cut as one loop; one with micro-joints as the runs between them. */
function contourShapes({ loop, ties }: Contour): readonly Shape[] {
  if (ties.length === 0) return [{ kind: 'loop', loop }];
  return segments(loop).flatMap((side) => cutShort(side, ties).map(runOf));
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
