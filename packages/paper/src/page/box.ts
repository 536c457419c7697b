import type { Box, Point } from '@tinwright/core';
import type { Item, Words } from './page.js';

/** How far letters reach below their base line, over the height of capitals. */
export const BELOW = 0.3;

/** The box a line of text takes up. */
export function wordsBox({
  at: [x, y],
  height,
  width,
  turn,
}: Pick<Words, 'at' | 'height' | 'width' | 'turn'>): Box {
  return turn === 0
    ? { min: [x, y - BELOW * height], max: [x + width, y + height] }
    : { min: [x - height, y], max: [x + BELOW * height, y + width] };
}

/** Box round things on a page; null for nothing. */
export function boxOfItems(items: readonly Item[]): Box | null {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  const see = ([x, y]: Point, reach = 0) => {
    x0 = Math.min(x0, x - reach);
    y0 = Math.min(y0, y - reach);
    x1 = Math.max(x1, x + reach);
    y1 = Math.max(y1, y + reach);
  };
  for (const i of items) {
    if (i.kind === 'ring') see(i.centre, i.radius);
    else if (i.kind === 'words') {
      const { min, max } = wordsBox(i);
      see(min);
      see(max);
    } else for (const p of i.points) see(p);
  }
  return items.length === 0 ? null : { min: [x0, y0], max: [x1, y1] };
}

/** True when two boxes share more than a line. */
export function boxesMeet(a: Box, b: Box): boolean {
  return a.min[0] < b.max[0] && b.min[0] < a.max[0] && a.min[1] < b.max[1] && b.min[1] < a.max[1];
}

/** A box grown by `by` on every side. */
export function grown({ min, max }: Box, by: number): Box {
  return { min: [min[0] - by, min[1] - by], max: [max[0] + by, max[1] + by] };
}

/** True when a straight line touches a box's inside. */
export function lineMeetsBox(a: Point, b: Point, { min, max }: Box): boolean {
  let [from, to] = [0, 1];
  for (const k of [0, 1] as const) {
    const d = b[k] - a[k];
    if (Math.abs(d) < 1e-12) {
      if (a[k] <= min[k] || a[k] >= max[k]) return false;
      continue;
    }
    const [s, t] = [(min[k] - a[k]) / d, (max[k] - a[k]) / d];
    from = Math.max(from, Math.min(s, t));
    to = Math.min(to, Math.max(s, t));
    if (from >= to) return false;
  }
  return true;
}
