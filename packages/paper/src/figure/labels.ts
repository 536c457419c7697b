import type { Box, Point } from '@tinwright/core';
import { contains } from '@tinwright/core/internal';
import { BELOW } from '../page/box.js';
import { letter } from '../page/letter.js';
import type { Item } from '../page/page.js';
import type { Typeface } from '../page/typeface.js';
import { type LabelSetting, led, OFF, steepTo } from './leader.js';
import type { PaperRoom } from './room.js';

/** A text that belongs to a line, to one of several points, or into an area of a drawing. mm of the page */
export interface Label {
  /** What it says, and shorter ways to say it where there is little room; one with a leader may have several lines. */
  readonly texts: readonly string[];
  readonly of:
    | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
    | { readonly kind: 'points'; readonly at: readonly Point[]; readonly radius: number }
    | { readonly kind: 'area'; readonly corners: readonly Point[] };
}

/** Place a label where it meets nothing, with a leader when it cannot stand at its place; null when there is no room. */
export function placed(
  { texts, of }: Label,
  room: PaperRoom,
  face: Typeface,
  height: number,
): readonly Item[] | null {
  const set = { room, face, height };
  for (const text of texts) {
    const items =
      of.kind === 'area'
        ? within(text, of.corners, set)
        : of.kind === 'points'
          ? led(text, of.at, () => of.radius, set)
          : (along(text, of, set) ??
            led(
              text,
              [1 / 2, 1 / 4, 3 / 4].map((t) => mix(of, t)),
              steepTo(of),
              set,
            ));
    if (items !== null) return items;
  }
  return null;
}

/** A text that names something and says something of it: in one line, else in two. */
export const inLines = (text: string): readonly string[] =>
  text.includes(': ') ? [text, text.replace(': ', ':\n')] : [text];

type LineOf = Extract<Label['of'], { kind: 'line' }>;

const mix = ({ from, to }: LineOf, t: number): Point => [
  from[0] + (to[0] - from[0]) * t,
  from[1] + (to[1] - from[1]) * t,
];

/** Beside an upright or level line, in its middle or further along. */
function along(text: string, line: LineOf, { room, face, height }: LabelSetting): readonly Item[] | null {
  const [dx, dy] = [Math.abs(line.to[0] - line.from[0]), Math.abs(line.to[1] - line.from[1])];
  if (Math.min(dx, dy) > 1e-6) return null;
  const turn = dx > dy ? 0 : 90;
  const length = Math.max(dx, dy);
  for (const t of [0.5, 0.35, 0.65, 0.2, 0.8])
    for (const side of [1, -1]) {
      const off = side > 0 ? OFF + BELOW * height : -OFF - height;
      const [x, y] = mix(line, t);
      const at: Point = turn === 0 ? [x, y + off] : [x - off, y];
      const words = letter(face, text, at, { height, align: 'middle', turn });
      if (words.width < 2 * length * Math.min(t, 1 - t) + 1e-9 && room.free(words)) return [words];
    }
  return null;
}

/** Points inside an area to lead to, near its middle first. */
export function insideOf(corners: readonly Point[]): readonly Point[] {
  const outline = corners.map((at) => ({ at, bulge: 0 }));
  const { min, max } = boxOf(corners);
  return [0.5, 0.35, 0.65, 0.2, 0.8].flatMap((v) =>
    [0.5, 0.3, 0.7, 0.15, 0.85].flatMap((u): readonly Point[] => {
      const at: Point = [min[0] + (max[0] - min[0]) * u, min[1] + (max[1] - min[1]) * v];
      return contains(outline, at) ? [at] : [];
    }),
  );
}

function boxOf(corners: readonly Point[]): Box {
  const [xs, ys] = [corners.map((p) => p[0]), corners.map((p) => p[1])];
  return { min: [Math.min(...xs), Math.min(...ys)], max: [Math.max(...xs), Math.max(...ys)] };
}

/** Inside an area, near its middle first. */
function within(
  text: string,
  corners: readonly Point[],
  { room, face, height }: LabelSetting,
): readonly Item[] | null {
  const outline = corners.map((at) => ({ at, bulge: 0 }));
  const [[x0, y0], [x1, y1]] = [boxOf(corners).min, boxOf(corners).max];
  for (const turn of [0, 90] as const)
    for (const v of [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8])
      for (const u of [0.5, 0.4, 0.6, 0.3, 0.7]) {
        const [x, y] = [x0 + (x1 - x0) * u, y0 + (y1 - y0) * v];
        const at: Point = turn === 0 ? [x, y - height / 2] : [x + height / 2, y];
        const words = letter(face, text, at, { height, align: 'middle', turn });
        if (contains(outline, [x, y]) && room.free(words)) return [words];
      }
  return null;
}
