import type { Point } from '@tinwright/core';
import { fail } from '@tinwright/core/internal';

/** A line or arc of a drawing; `bulge` as in loops. mm */
export interface ReadStroke {
  readonly from: Point;
  readonly to: Point;
  readonly bulge: number;
}

/** A closed outline, a corner a point: x, y and the bulge of the segment that starts there. */
export type ReadOutline = readonly (readonly [number, number, number])[];

const JOIN = 0.01; // mm between ends that are one
const ALIKE = 1e-6; // of bulges that are one

/** Strokes with an end in one square of a grid, and how many of the first are used: they are passed over once. */
interface Ends {
  readonly strokes: number[];
  used: number;
}

/**
 * The closed outlines of drawn lines, each a run of strokes. What is drawn closed is an outline of its own, though
 * another touches it; the rest is joined across lines.
 * @throws JobError `outline-open` for a chain that does not close, with its ends; `outline-twice` for a line drawn twice
 */
export function outlinesOf(lines: readonly (readonly ReadStroke[])[]): readonly ReadOutline[] {
  const [closed, open] = [lines.filter(isClosed), lines.filter((l) => !isClosed(l))];
  return [...closed.flatMap(chained), ...chained(open.flat())];
}

const isClosed = (line: readonly ReadStroke[]) =>
  line.length > 1 && near((line[0] as ReadStroke).from, (line.at(-1) as ReadStroke).to);

/**
 * Strokes joined end to end into closed outlines, in linear time: ends are looked up on a grid.
 * @throws JobError `outline-open` for a chain that does not close, with its ends
 */
function chained(strokes: readonly ReadStroke[]): readonly ReadOutline[] {
  drawnOnce(strokes);
  const ends = new Map<string, Ends>();
  const cell = (v: number) => Math.round(v / JOIN);
  const key = (x: number, y: number) => `${x} ${y}`;
  strokes.forEach((s, i) => {
    for (const p of [s.from, s.to]) {
      const k = key(cell(p[0]), cell(p[1]));
      const there = ends.get(k);
      if (there === undefined) ends.set(k, { strokes: [i], used: 0 });
      else there.strokes.push(i);
    }
  });
  const used = new Set<number>();
  const at = (p: Point): number | undefined => {
    for (const dx of [0, -1, 1])
      for (const dy of [0, -1, 1]) {
        const there = ends.get(key(cell(p[0]) + dx, cell(p[1]) + dy));
        if (there === undefined) continue;
        while (used.has(there.strokes[there.used] as number)) there.used += 1;
        const free = there.strokes[there.used];
        if (free !== undefined) return free;
      }
    return undefined;
  };
  const outlines: ReadOutline[] = [];
  strokes.forEach((first, i) => {
    if (used.has(i)) return;
    used.add(i);
    const chain: [number, number, number][] = [[...first.from, first.bulge]];
    let end = first.to;
    for (let next = at(end); next !== undefined; next = at(end)) {
      used.add(next);
      const s = strokes[next] as ReadStroke;
      const forward = near(s.from, end);
      chain.push([...end, forward ? s.bulge : -s.bulge]);
      end = forward ? s.to : s.from;
    }
    if (!near(end, first.from))
      fail(
        'outline-open',
        [],
        (say) =>
          `a chain of lines is open: it starts at ${place(first.from, say.size)} and ends at ${place(end, say.size)}`,
        'Close it in the drawing',
      );
    outlines.push(chain);
  });
  return outlines;
}

/** @throws JobError `outline-twice` for a stroke that is drawn over another, there or back: it would be cut twice */
function drawnOnce(strokes: readonly ReadStroke[]): void {
  const cell = (v: number) => Math.round(v / JOIN);
  const key = (a: Point, b: Point, bulge: number) =>
    [...[...a, ...b].map(cell), Math.round(bulge / ALIKE)].join(' ');
  const seen = new Set<string>();
  for (const { from, to, bulge } of strokes) {
    if (seen.has(key(from, to, bulge)))
      fail(
        'outline-twice',
        [],
        (say) => `a line from ${place(from, say.size)} to ${place(to, say.size)} is drawn twice`,
        'Draw every line once',
      );
    if (near(from, to)) continue; // too short to be told from its neighbours
    seen.add(key(from, to, bulge));
    seen.add(key(to, from, -bulge));
  }
}

const place = ([x, y]: Point, size: (mm: number) => string) => `${size(x)}, ${size(y)}`;

/** True for ends that are one. mm */
export const near = (a: Point, b: Point): boolean => Math.hypot(a[0] - b[0], a[1] - b[1]) <= 2 * JOIN;
