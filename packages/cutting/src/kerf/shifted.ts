import { isArc, type Loop, type Point, type Segment, segments } from '@tinwright/core';
import { heading } from './run.js';

/** A side moved to the right of its travel; null for an arc that is rounder than the distance. */
export interface Shifted {
  readonly side: Segment;
  readonly moved: Segment | null;
  /** How the way on from its end to the next side goes: a round where the corner opens, else they cross. */
  readonly corner: 'smooth' | 'opens' | 'closes';
}

/** Sines of turns smaller than this are no corner. */
const SMOOTH = 1e-9;

/** Every side of a loop moved by `by` to the right of its travel; negative to the left. */
export function shifted(loop: Loop, by: number): readonly Shifted[] {
  const sides = segments(loop);
  const ends = sides.map((s) => [heading(s, 'start'), heading(s, 'end')] as const);
  return sides.map((side, i) => {
    const [first, last] = ends[i] as readonly [Point, Point];
    const [next] = ends[(i + 1) % sides.length] as readonly [Point, Point];
    const turn = last[0] * next[1] - last[1] * next[0];
    const back = last[0] * next[0] + last[1] * next[1] < 0;
    const smooth = Math.abs(turn) < SMOOTH && !back;
    const corner = smooth ? 'smooth' : turn * Math.sign(by) > 0 ? 'opens' : 'closes';
    return { side, moved: move(side, first, last, by), corner };
  });
}

function move(s: Segment, first: Point, last: Point, by: number): Segment | null {
  const from: Point = [s.from[0] + first[1] * by, s.from[1] - first[0] * by];
  const to: Point = [s.to[0] + last[1] * by, s.to[1] - last[0] * by];
  if (!isArc(s)) return { from, to, bulge: 0 };
  // the centre is to the left of a counter-clockwise arc: moved right it grows
  const chord = (a: Point, b: Point) =>
    (b[0] - a[0]) * (s.to[0] - s.from[0]) + (b[1] - a[1]) * (s.to[1] - s.from[1]);
  const kept = chord(from, to) > 0 || Math.abs(s.bulge) >= 1;
  const shrinks = s.bulge > 0 !== by > 0;
  if (shrinks && radiusOf(s) <= Math.abs(by) + 1e-9) return null;
  return kept || !shrinks ? { from, to, bulge: s.bulge } : null;
}

function radiusOf({ from, to, bulge }: Segment): number {
  const chord = Math.sqrt((to[0] - from[0]) ** 2 + (to[1] - from[1]) ** 2);
  return (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge));
}

/** The round that joins two moved sides where the corner between them opens. */
export function roundOf(vertex: Point, from: Point, to: Point, by: number): Segment {
  const a = Math.atan2(from[1] - vertex[1], from[0] - vertex[0]);
  const b = Math.atan2(to[1] - vertex[1], to[0] - vertex[0]);
  const full = 2 * Math.PI;
  const sweep = by > 0 ? (((b - a) % full) + full) % full : -((((a - b) % full) + full) % full);
  return { from, to, bulge: Math.tan(sweep / 4) };
}
