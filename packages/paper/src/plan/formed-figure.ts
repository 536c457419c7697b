import type { Box, Formed, Point } from '@tinwright/core';
import { FRONT, ISOMETRIC, SIDE, see, TOP, type View } from '@tinwright/files/internal';
import type { PlanWords } from '@tinwright/words/internal';
import { dimension } from '../figure/dimension.js';
import { type Projection, projectionSymbol } from '../figure/projection-symbol.js';
import { boxOfItems } from '../page/box.js';
import type { Dims } from '../page/dims.js';
import type { Figure } from '../page/figure.js';
import { letter } from '../page/letter.js';
import { type Item, moved } from '../page/page.js';
import { SCALES } from '../page/paper.js';
import type { Typeface } from '../page/typeface.js';
import type { FormedViews } from './formed-views.js';

/** What the picture of a formed part is drawn with. */
export interface FormedAsk {
  readonly name: string;
  readonly formed: Formed;
  readonly views: FormedViews;
  readonly dims: Dims;
  readonly words: PlanWords;
  readonly face: Typeface;
  readonly height: number;
  /** By the custom of the paper: first angle where it is metric, third where it is in inches. */
  readonly projection: Projection;
  /** How high it may be: whole, or low where that saves a sheet. */
  readonly size: 'whole' | 'low';
}

const SHARE = 0.6; // of the width for the three views
const TALLEST = { whole: 32, low: 20 } as const; // heights of text
const APART = 6; // heights of text between two views
const OFF = 3; // heights of text from a view to its dimension line
const SIGN = 7; // heights of text that the sign of the projection is wide, air included
const BETWEEN = 8; // mm between views and isometric picture

/** A formed part in three views with its finished sizes and in an isometric picture, `width` mm wide. */
export function formedFigure(ask: FormedAsk, width: number): Figure {
  const { name, formed, words, face, height } = ask;
  const views = threeViews(ask, width * SHARE);
  const across = views.box.max[0] - views.box.min[0];
  const up = views.box.max[1] - views.box.min[1];
  const left = moved(views.items, [-views.box.min[0], -views.box.min[1]]);
  const free: Point = [width - across - BETWEEN, Math.max(up, 0.6 * TALLEST[ask.size] * height)];
  const caption = (text: string, at: Point) => letter(face, text, at, { height, align: 'middle' });
  const below = 3 * height; // for the caption
  const [w, h] = extent(formed, ISOMETRIC);
  const scale = Math.min(free[0] / w, (free[1] - below) / h);
  const { items: picture, box } = drawn(ask.views, ISOMETRIC, scale);
  const middle = across + BETWEEN + free[0] / 2;
  const isometric = moved(picture, [middle - (box.min[0] + box.max[0]) / 2, below - box.min[1]]);
  const items = [...left, ...isometric, caption(words.isometric, [middle, 0.3 * height])];
  return { alt: words.formedAlt(name), items, box: boxOfItems(items) as Box };
}

/**
 * Front view, and top and left side view where the projection has them (ISO 5456-2), at the largest scale that fits. In third
 * angle sizes stand below and before the same views.
 */
function threeViews(
  { formed, views, dims, words, face, height, projection, size: whole }: FormedAsk,
  most: number,
): { items: readonly Item[]; box: Box } {
  const [X, Y, Z] = formed.size;
  const apart = APART * height;
  const band = (OFF + 2) * height;
  const fits = (s: number) =>
    band + X * s + apart + Y * s <= most &&
    Z * s + apart + Y * s + band + 2 * height <= TALLEST[whole] * height;
  const { ratio, text } = SCALES.find((s) => fits(s.ratio)) ?? (SCALES.at(-1) as (typeof SCALES)[number]);
  const at = (view: View, [dx, dy]: Point) => {
    const { items, box } = drawn(views, view, ratio);
    return moved(items, [dx - box.min[0], dy - box.min[1]]);
  };
  const [x, y, z] = [X * ratio, Y * ratio, Z * ratio];
  const size = (
    axis: 0 | 1,
    from: number,
    to: number,
    edge: number,
    value: number,
    beside: 'before' | 'after',
  ) =>
    dimension(
      { axis, from, to, edge, off: -OFF * height, text: dims.text(value), value, beside },
      face,
      height,
    );
  const caption = (said: string, px: number, py: number) =>
    letter(face, said, [px, py - 1.8 * height], { height, align: 'middle' });
  const first = projection === 'first';
  // lower left corners of the views
  const front: Point = [first ? 0 : y + apart, first ? y + apart : 0];
  const top: Point = [front[0], first ? 0 : z + apart];
  const side: Point = [first ? x + apart : 0, front[1]];
  const low = first ? top : front;
  const scale = letter(face, words.viewScale(text), [0, 0], { height });
  const { max } = boxOfItems([scale]) as Box;
  // the corner that no view takes, or a row below where the corner is too small for sign and scale beside a size
  const corner = first || Math.max(SIGN * height, max[0]) <= front[0] - band - height;
  const sign: Point = [side[0], first ? 0 : corner ? top[1] : -(OFF + 6) * height];
  const underSign = first ? -(OFF + 2.6) * height : top[1] - 2 * height;
  const scaleAt: Point = corner ? [side[0], underSign] : [side[0] + SIGN * height, sign[1] + 0.5 * height];
  const below = (p: Point): number => (p === low ? -(OFF + 0.8) * height : p[1]);
  const items = [
    ...at(TOP, top),
    ...at(FRONT, front),
    ...at(SIDE, side),
    ...size(0, low[0], low[0] + x, low[1], X, 'after'),
    ...size(1, top[1], top[1] + y, top[0], Y, 'before'),
    ...size(1, front[1], front[1] + z, first ? front[0] : side[0], Z, 'after'),
    caption(words.top, top[0] + x / 2, below(top)),
    caption(words.front, front[0] + x / 2, below(front)),
    caption(words.side, side[0] + y / 2, side[1]),
    ...projectionSymbol(projection, sign, 2 * height),
    ...moved([scale], scaleAt),
  ];
  return { items, box: boxOfItems(items) as Box };
}

/** The visible lines of a part from one side at a scale. */
function drawn(views: FormedViews, view: View, scale: number): { items: readonly Item[]; box: Box } {
  const on = ([x, y]: Point): Point => [x * scale, y * scale];
  const items = views(view, scale).map(
    (l): Item => ({
      kind: 'stroke',
      pen: l.kind === 'edge' ? 'wide' : 'narrow',
      points: [on(l.from), on(l.to)],
    }),
  );
  return { items, box: boxOfItems(items) as Box };
}

/** How wide and how high the box round a part looks, true size. */
function extent({ box: { min, max } }: Formed, view: View): Point {
  const corners = [min[0], max[0]].flatMap((x) =>
    [min[1], max[1]].flatMap((y) => [min[2], max[2]].map((z) => see(view, [x, y, z]).at)),
  );
  const along = (k: 0 | 1) => Math.max(...corners.map((c) => c[k])) - Math.min(...corners.map((c) => c[k]));
  return [along(0), along(1)];
}
