import type { Point } from '@tinwright/core';
import { boxOf } from '@tinwright/core/internal';
import type { Drawing, DrawingLayer, Shape } from '../drawing.js';
import type { PictureLayerName } from '../layers.js';
import type { VisibleLine } from './visible.js';

/** Width of a character over the height of capitals, of common sans-serif faces; generous. */
export const CHARACTER = 0.85;

/** Lines scaled so that the longer side of the picture is `size` mm, and the scale. */
export function scaledTo(
  lines: readonly VisibleLine[],
  size: number,
): { readonly lines: readonly VisibleLine[]; readonly scale: number } {
  const { min, max } = boxOf(lines.flatMap((l) => [l.from, l.to]));
  const scale = size / Math.max(max[0] - min[0], max[1] - min[1], 1);
  const at = ([x, y]: Point): Point => [x * scale, y * scale];
  return { lines: lines.map((l) => ({ ...l, from: at(l.from), to: at(l.to) })), scale };
}

/** Visible lines on the layers of their kinds. */
export function lineLayers(lines: readonly VisibleLine[]): readonly DrawingLayer[] {
  const of = (kind: VisibleLine['kind'], name: PictureLayerName): DrawingLayer => ({
    name,
    shapes: lines
      .filter((l) => l.kind === kind)
      .map((l): Shape => ({ kind: 'line', from: l.from, to: l.to })),
  });
  return [of('edge', 'EDGE'), of('bend', 'BEND'), of('mark', 'MARK')];
}

/** A drawing of the layers that hold something. */
export function pageOf(title: string, layers: readonly DrawingLayer[]): Drawing {
  const full = layers.filter((l) => l.shapes.length > 0);
  return { title, layers: full, box: boxOf(full.flatMap((l) => l.shapes).flatMap(reachOf)) };
}

/** Ends of a line, corners of a text: it is taken to be as wide as its letters at most. */
function reachOf(s: Shape): readonly Point[] {
  if (s.kind === 'line') return [s.from, s.to];
  if (s.kind !== 'text') return [];
  const angle = ((s.rotation ?? 0) * Math.PI) / 180;
  const width = CHARACTER * s.height * s.text.length;
  const [u, v] = [Math.cos(angle), Math.sin(angle)];
  const [low, high] = s.centred === true ? [-width / 2, width / 2] : [0, width];
  return [low, high].flatMap((w) =>
    [-0.3, 1].map((h): Point => [s.at[0] + u * w - v * h * s.height, s.at[1] + v * w + u * h * s.height]),
  );
}
