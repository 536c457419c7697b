import type { FlatBend, FlatPattern, Loop, Point } from '@tinwright/core';
import { roundOf } from '@tinwright/core/internal';
import { clearPoint } from '../clear-point.js';
import type { Drawing, DrawingLayer, Shape } from '../drawing.js';
import { type CutLayerName, LAYERS } from '../layers.js';
import { markShapes, punchShape, withinOutline } from './mark-shapes.js';
import type { MarkStyle } from './style.js';

const LARGEST_TEXT = 8;
const LEAST_TEXT = 1.5;

/**
 * The cut file of a part: bend lines, marks, holes, outline, and lines of text near the base point.
 * Coordinates are the flat pattern's own, mm. @param punched more places for a centre punch
 */
export function flatDrawing(
  flat: FlatPattern,
  title: string,
  text: readonly string[],
  marks: MarkStyle = 'cross',
  punched: readonly Point[] = [],
): Drawing {
  const trim = withinOutline(flat.outline);
  const bends = (direction: FlatBend['direction']) =>
    flat.bends
      .filter((b) => b.direction === direction)
      .map((b): Shape => ({ kind: 'line', from: b.line[0], to: b.line[1] }));
  const holds: Readonly<Record<CutLayerName, readonly Shape[]>> = {
    CUT: [...flat.holes.map(holeShape), { kind: 'loop', loop: flat.outline }], // holes first: the sheet still holds the part
    'BEND-UP': bends('up'),
    'BEND-DOWN': bends('down'),
    'WELD-MARK': flat.marks.filter((m) => m.hole === null).flatMap((m) => markShapes(m.at, marks, trim)),
    SCRIBE: [
      ...flat.scribes.map(([from, to]): Shape => ({ kind: 'line', from, to })),
      ...punched.map(punchShape),
    ],
    LEAD: [],
    NOTE: notes(flat, text),
  };
  const layers = LAYERS.map(({ name }): DrawingLayer => ({ name, shapes: holds[name] }));
  return { title, layers: layers.filter((l) => l.shapes.length > 0), box: flat.blank };
}

/** A loop of two half circles is a hole to drill or cut as a circle. */
function holeShape(loop: Loop): Shape {
  const round = roundOf(loop);
  return round === null ? { kind: 'loop', loop } : { kind: 'circle', ...round };
}

/** Lines of text round a clear point of the base, as large as its panel allows. A character is taken to be one height wide. */
function notes(flat: FlatPattern, text: readonly string[]): readonly Shape[] {
  const shape = flat.panels[0]?.shape ?? [];
  const base = clearPoint(flat);
  const [xs, ys] = [shape.map((p) => p[0]), shape.map((p) => p[1])];
  const longest = Math.max(1, ...text.map((t) => [...t].length));
  const across = 2 * Math.min(base[0] - Math.min(...xs), Math.max(...xs) - base[0]);
  const up = 2 * Math.min(base[1] - Math.min(...ys), Math.max(...ys) - base[1]);
  const fit = Math.min((0.8 * across) / longest, (0.6 * up) / (1.6 * text.length));
  const height = Math.max(LEAST_TEXT, Math.min(LARGEST_TEXT, fit));
  return text.map((line, i): Shape => {
    const at: Point = [
      base[0] - 0.35 * height * [...line].length,
      base[1] + (0.8 * (text.length - 1) - 0.35 - 1.6 * i) * height,
    ];
    return { kind: 'text', at, height, text: line };
  });
}
