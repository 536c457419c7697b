import type { Box, Point } from '@tinwright/core';
import { boxOf } from '@tinwright/core/internal';
import type { Drawing } from '../drawing.js';
import { lineLayers, pageOf } from '../picture/page.js';
import { partSurface } from '../picture/part-surface.js';
import type { View } from '../picture/view.js';
import { type VisibleLine, visibleLines } from '../picture/visible.js';
import { marksByPanel, type Pictured } from './picture.js';

const APART = 20; // mm between two views

/** From the south: across and up on the page, and towards the viewer. */
export const FRONT: View = { across: [1, 0, 0], up: [0, 0, 1], viewer: [0, -1, 0] };
/** From above. */
export const TOP: View = { across: [1, 0, 0], up: [0, 1, 0], viewer: [0, 0, 1] };
/** From the west. */
export const SIDE: View = { across: [0, -1, 0], up: [0, 0, 1], viewer: [-1, 0, 0] };

/**
 * Front, top and side view of a formed part at true scale, hidden lines removed, in first-angle arrangement
 * (ISO 5456-2): the view from above lies below the front view, the view from the left (west) to its right.
 */
export function viewsDrawing(title: string, pictured: Pictured): Drawing {
  const drawn = [FRONT, TOP, SIDE].map((view) =>
    visibleLines(partSurface(pictured.formed, view, undefined, marksByPanel(pictured)), view),
  );
  const [front, top, side] = drawn.map((lines) => ({
    lines,
    box: boxOf(lines.flatMap((l) => [l.from, l.to])),
  })) as [Placed, Placed, Placed];
  const below: Point = [front.box.min[0] - top.box.min[0], front.box.min[1] - APART - top.box.max[1]];
  const beside: Point = [front.box.max[0] + APART - side.box.min[0], front.box.min[1] - side.box.min[1]];
  return pageOf(
    title,
    lineLayers([...front.lines, ...moved(top.lines, below), ...moved(side.lines, beside)]),
  );
}

interface Placed {
  readonly lines: readonly VisibleLine[];
  readonly box: Box;
}

function moved(lines: readonly VisibleLine[], [dx, dy]: Point): readonly VisibleLine[] {
  const at = ([x, y]: Point): Point => [x + dx, y + dy];
  return lines.map((l) => ({ ...l, from: at(l.from), to: at(l.to) }));
}
