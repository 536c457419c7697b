import type { Point } from '@tinwright/core';
import { letter } from '../page/letter.js';
import type { Item, Words } from '../page/page.js';
import type { Typeface } from '../page/typeface.js';
import type { PaperRoom } from './room.js';

/** White between a text and what it belongs to, mm. */
export const OFF = 0.6;
const RADII = [5, 7, 9.5, 12.5, 16, 20, 25, 31, 38, 46, 55];
const DIRECTIONS = 16;
const CROSSED = 4; // mm a leader may be longer to cross one line less
const ARROW = 1.6; // mm
const LEAD = 1.6; // from base line to base line, in heights of text

/** What labels are set with, and where there is room for them. */
export interface LabelSetting {
  readonly room: PaperRoom;
  readonly face: Typeface;
  readonly height: number;
}

/** How far from an anchor a leader in this direction starts; null for a direction it does not take. mm */
export type LeaderStart = (u: number, v: number) => number | null;

/** Leaders leave a line at 30° or more, so that they are not taken for a part of it. */
export function steepTo({ from, to }: { readonly from: Point; readonly to: Point }): LeaderStart {
  const l = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [x, y] = [(to[0] - from[0]) / l, (to[1] - from[1]) / l];
  return (u, v) => (Math.abs(u * y - v * x) < 0.5 ? null : 0);
}

interface Led {
  readonly cost: number;
  readonly words: readonly Words[];
  readonly leader: readonly [Point, Point];
}

/** At the end of a leader to one of these points: the shortest that crosses little. A text may have several lines. */
export function led(
  text: string,
  anchors: readonly Point[],
  start: LeaderStart,
  set: LabelSetting,
): readonly Item[] | null {
  let best: Led | null = null;
  for (const r of RADII) {
    if (best !== null && r >= best.cost) break;
    for (const anchor of anchors)
      for (let k = 0; k < DIRECTIONS; k++) {
        const found = tried(text, anchor, r, (2 * Math.PI * (k + 0.5)) / DIRECTIONS, start, set);
        if (found !== null && found.cost < (best?.cost ?? Infinity)) best = found;
      }
  }
  return best === null ? null : [...best.words, ...arrow(best.leader)];
}

function tried(
  text: string,
  [x, y]: Point,
  r: number,
  angle: number,
  start: LeaderStart,
  { room, face, height }: LabelSetting,
): Led | null {
  const [u, v] = [Math.cos(angle), Math.sin(angle)];
  const off = start(u, v);
  if (off === null) return null;
  const end: Point = [x + (off + r) * u, y + (off + r) * v];
  const broken = text.split('\n');
  const first = end[1] + (LEAD * height * (broken.length - 1) - height) / 2;
  const words = broken.map((t, i) =>
    letter(face, t, [end[0] + Math.sign(u) * OFF, first - LEAD * height * i], {
      height,
      align: u > 0 ? 'start' : 'end',
    }),
  );
  if (!words.every(room.free)) return null;
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
