import { type Line, type Loop, type Point, segments } from '@tinwright/core';
import { lineOnMetal } from '@tinwright/core/internal';
import type { Shape } from '../drawing.js';
import type { MarkStyle } from './style.js';

const HALF = 3; // mm, half the size of a cross or dash
const RING = 1; // mm, radius of a circle

/** Shortens a line of a mark to what lies on the metal. */
export type TrimmedLine = (line: Line) => Line;

/** Lines end on an outline: beyond it a table would mark what is no part, or run off its sheet. */
export function withinOutline(outline: Loop): TrimmedLine {
  const edges = segments(outline);
  return (line) => lineOnMetal(line, outline, edges);
}

/** A fastener's place as a style marks it. */
export function markShapes([x, y]: Point, style: MarkStyle, trim: TrimmedLine): readonly Shape[] {
  const line = (from: Point, to: Point): Shape => {
    const [a, b] = trim([from, to]);
    return { kind: 'line', from: a, to: b };
  };
  switch (style) {
    case 'cross':
      return [
        line([x - HALF, y - HALF], [x + HALF, y + HALF]),
        line([x - HALF, y + HALF], [x + HALF, y - HALF]),
      ];
    case 'dash':
      return [line([x - HALF, y], [x + HALF, y])];
    case 'point':
      return [{ kind: 'point', at: [x, y] }];
    case 'circle':
      return [{ kind: 'circle', centre: [x, y], radius: RING }];
    case 'none':
      return [];
  }
}

/** A place for a centre punch. */
export const punchShape = (at: Point): Shape => ({ kind: 'point', at });
