import type { Box, Point } from '@tinwright/core';
import { linesCross } from '@tinwright/core/internal';
import { boxesMeet, grown, lineMeetsBox, wordsBox } from '../page/box.js';
import type { Item, Words } from '../page/page.js';

const AIR = 0.35; // mm of white kept round a text
const CELL = 10; // mm, side of a cell of the index
const ROW = 1e6; // cells in a row of it, more than there are

type Line = readonly [Point, Point];

/** What stands on a drawing already, for finding room for more. */
export interface PaperRoom {
  /** True when a text has nothing in its way. */
  readonly free: (words: Words) => boolean;
  /** Lines a leader would cross; null when it would run through a text or along what it crosses. */
  readonly crossings: (leader: Line) => number | null;
  readonly add: (items: readonly Item[]) => void;
}

/** Room inside a box. The record fills as things are added; it lives as long as one drawing is laid out. */
export function roomIn(region: Box): PaperRoom {
  const lines: Line[] = [];
  const cells = new Map<number, number[]>();
  const boxes: Box[] = [];
  /** True when one of the lines near a box is found; a line may come up more than once. */
  const among = (box: Box, found: (line: Line) => boolean): boolean =>
    cellsOf(box).some((key) => cells.get(key)?.some((i) => found(lines[i] as Line)) === true);
  const addLine = (line: Line) => {
    const index = lines.push(line) - 1;
    for (const key of cellsOf(boxOfLine(line))) {
      const cell = cells.get(key);
      if (cell === undefined) cells.set(key, [index]);
      else cell.push(index);
    }
  };
  return {
    free: (words) => {
      const box = grown(wordsBox(words), AIR);
      if (!holds(region, box) || boxes.some((b) => boxesMeet(b, box))) return false;
      return !among(box, ([a, b]) => lineMeetsBox(a, b, box));
    },
    crossings: ([a, b]) => {
      const box = boxOfLine([a, b]);
      if (!holds(region, box) || boxes.some((t) => lineMeetsBox(a, b, grown(t, AIR)))) return null;
      const crossed = new Set<Line>();
      const along = among(box, (line) => {
        if (!linesCross(a, b, ...line)) return false;
        crossed.add(line);
        return slim(a, b, ...line);
      });
      return along ? null : crossed.size;
    },
    add: (items) => {
      for (const item of items) {
        if (item.kind === 'words') boxes.push(wordsBox(item));
        else for (const line of linesOf(item)) addLine(line);
      }
    },
  };
}

/** The straight lines of a thing; a circle as the square round it. */
export function linesOf(item: Exclude<Item, Words>): readonly Line[] {
  if (item.kind === 'ring') {
    const [x, y] = item.centre;
    const r = item.radius;
    return closedLines([
      [x - r, y - r],
      [x + r, y - r],
      [x + r, y + r],
      [x - r, y + r],
    ]);
  }
  if (item.kind === 'fill' || item.closed === true) return closedLines(item.points);
  return item.points.slice(1).map((p, i): Line => [item.points[i] as Point, p]);
}

const closedLines = (points: readonly Point[]): readonly Line[] =>
  points.map((p, i): Line => [p, points[(i + 1) % points.length] as Point]);

const holds = (region: Box, { min, max }: Box) =>
  min[0] >= region.min[0] && min[1] >= region.min[1] && max[0] <= region.max[0] && max[1] <= region.max[1];

function boxOfLine([[ax, ay], [bx, by]]: Line): Box {
  return { min: [Math.min(ax, bx), Math.min(ay, by)], max: [Math.max(ax, bx), Math.max(ay, by)] };
}

function cellsOf({ min, max }: Box): readonly number[] {
  const found: number[] = [];
  for (let i = Math.floor(min[0] / CELL); i <= Math.floor(max[0] / CELL); i++)
    for (let j = Math.floor(min[1] / CELL); j <= Math.floor(max[1] / CELL); j++) found.push(i * ROW + j);
  return found;
}

/** True for lines that cross at less than about 10°: which is which is hard to see. */
function slim(a: Point, b: Point, c: Point, d: Point): boolean {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  return Math.abs(ux * vy - uy * vx) < 0.17 * Math.hypot(ux, uy) * Math.hypot(vx, vy);
}
