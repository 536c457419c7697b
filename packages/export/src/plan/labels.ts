import type { Point } from '@tinwright/core';
import { BELOW } from '../page/box.js';
import { letter } from '../page/letter.js';
import type { Item, Words } from '../page/page.js';
import type { Typeface } from '../page/typeface.js';
import type { Room } from './room.js';

/** A text that belongs to a line, to one of several points, or into an area of a drawing. mm of the page */
export interface Label {
  /** What it says, and shorter ways to say it where there is little room. */
  readonly texts: readonly string[];
  readonly of:
    | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
    | { readonly kind: 'points'; readonly at: readonly Point[]; readonly radius: number }
    | { readonly kind: 'area'; readonly corners: readonly Point[] };
}

const OFF = 0.6; // mm from a line to its text
const RADII = [5, 7, 9.5, 12.5, 16, 20, 25, 31, 38, 46, 55];
const DIRECTIONS = 16;
const CROSSED = 4; // mm a leader may be longer to cross one line less
const ARROW = 1.6; // mm

/** Place a label where it meets nothing, with a leader when it cannot stand at its place; null when there is no room. */
export function placed(
  { texts, of }: Label,
  room: Room,
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

/** What labels are set with, and where there is room for them. */
interface Setting {
  readonly room: Room;
  readonly face: Typeface;
  readonly height: number;
}

type LineOf = Extract<Label['of'], { kind: 'line' }>;

const mix = ({ from, to }: LineOf, t: number): Point => [
  from[0] + (to[0] - from[0]) * t,
  from[1] + (to[1] - from[1]) * t,
];

/** Beside an upright or level line, in its middle or further along. */
function along(text: string, line: LineOf, { room, face, height }: Setting): readonly Item[] | null {
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

/** How far from an anchor a leader in this direction starts; null for a direction it does not take. mm */
type Start = (u: number, v: number) => number | null;

/** Leaders leave a line at 30° or more, so that they are not taken for a part of it. */
function steepTo({ from, to }: LineOf): Start {
  const l = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [x, y] = [(to[0] - from[0]) / l, (to[1] - from[1]) / l];
  return (u, v) => (Math.abs(u * y - v * x) < 0.5 ? null : 0);
}

interface Led {
  readonly cost: number;
  readonly words: Words;
  readonly leader: readonly [Point, Point];
}

/** At the end of a leader to one of these points: the shortest that crosses little. */
function led(text: string, anchors: readonly Point[], start: Start, set: Setting): readonly Item[] | null {
  let best: Led | null = null;
  for (const r of RADII) {
    if (best !== null && r >= best.cost) break;
    for (const anchor of anchors)
      for (let k = 0; k < DIRECTIONS; k++) {
        const found = tried(text, anchor, r, (2 * Math.PI * (k + 0.5)) / DIRECTIONS, start, set);
        if (found !== null && found.cost < (best?.cost ?? Infinity)) best = found;
      }
  }
  return best === null ? null : [best.words, ...arrow(best.leader)];
}

function tried(
  text: string,
  [x, y]: Point,
  r: number,
  angle: number,
  start: Start,
  { room, face, height }: Setting,
): Led | null {
  const [u, v] = [Math.cos(angle), Math.sin(angle)];
  const off = start(u, v);
  if (off === null) return null;
  const end: Point = [x + (off + r) * u, y + (off + r) * v];
  const at: Point = [end[0] + Math.sign(u) * OFF, end[1] - height / 2];
  const words = letter(face, text, at, { height, align: u > 0 ? 'start' : 'end' });
  if (!room.free(words)) return null;
  const leader = [[x + off * u, y + off * v] as Point, end] as const;
  const crossed = room.crossings(leader);
  return crossed === null ? null : { cost: r + CROSSED * crossed, words, leader };
}

/** A leader that ends in a filled arrowhead. */
function arrow([tip, end]: readonly [Point, Point]): readonly Item[] {
  const l = Math.hypot(end[0] - tip[0], end[1] - tip[1]);
  const [u, v] = [(end[0] - tip[0]) / l, (end[1] - tip[1]) / l];
  const back = (side: number): Point => [
    tip[0] + ARROW * u - 0.16 * side * ARROW * v,
    tip[1] + ARROW * v + 0.16 * side * ARROW * u,
  ];
  return [
    { kind: 'stroke', pen: 'narrow', points: [tip, end] },
    { kind: 'fill', points: [tip, back(1), back(-1)] },
  ];
}

/** Inside an area, near its middle first. */
function within(
  text: string,
  corners: readonly Point[],
  { room, face, height }: Setting,
): readonly Item[] | null {
  const [xs, ys] = [corners.map((p) => p[0]), corners.map((p) => p[1])];
  const [x0, x1] = [Math.min(...xs), Math.max(...xs)];
  const [y0, y1] = [Math.min(...ys), Math.max(...ys)];
  for (const turn of [0, 90] as const)
    for (const v of [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8])
      for (const u of [0.5, 0.4, 0.6, 0.3, 0.7]) {
        const [x, y] = [x0 + (x1 - x0) * u, y0 + (y1 - y0) * v];
        const at: Point = turn === 0 ? [x, y - height / 2] : [x + height / 2, y];
        const words = letter(face, text, at, { height, align: 'middle', turn });
        if (contains(corners, [x, y]) && room.free(words)) return [words];
      }
  return null;
}

function contains(corners: readonly Point[], [x, y]: Point): boolean {
  return corners.reduce((inside, p, i) => {
    const q = corners[(i + 1) % corners.length] as Point;
    if (p[1] > y === q[1] > y) return inside;
    return x < p[0] + ((q[0] - p[0]) * (y - p[1])) / (q[1] - p[1]) ? !inside : inside;
  }, false);
}
