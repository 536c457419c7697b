import type { Point } from '@tinwright/core';
import { polygonArea } from '@tinwright/core/internal';
import { type BoxesNear, boxesNear } from './boxes-near.js';
import type { Facet, Surface, SurfaceLine } from './surface.js';
import { faces, type Seen, see, type View } from './view.js';

/** A stretch of a line that nothing stands in front of, on the page. */
export interface VisibleLine {
  readonly from: Point;
  readonly to: Point;
  readonly kind: SurfaceLine['kind'];
}

const IN_FRONT = 1e-3; // mm towards the viewer before a facet hides a line: lines lie on facets
const SHORT = 1e-4; // mm; shorter stretches are rounding

/**
 * Facets on the page, all numbers of a kind in one row, as a sieve has a hundred thousand of them: of each four numbers a
 * side, where it starts and its run with the inside on the left; how near it is at any point, a·x + b·y + c.
 */
interface Screens {
  readonly sides: Float64Array;
  /** Where the sides of each begin, and those of the next. */
  readonly starts: Uint32Array;
  readonly planes: Float64Array;
  /** Which of them a line has to be held against. */
  readonly near: BoxesNear;
}

/**
 * Lines of a surface less what its facets hide. Exact: every line is cut by every facet's outline on the page and
 * by where it dips behind the facet's plane; nothing is painted over.
 */
export function visibleLines({ facets, lines }: Surface, view: View): readonly VisibleLine[] {
  return visibleBehind(facets, view)(lines);
}

/** The same for any lines behind the same facets, which are made ready once. */
export function visibleBehind(
  facets: readonly Facet[],
  view: View,
): (lines: readonly SurfaceLine[]) => readonly VisibleLine[] {
  const screens = screensOf(
    facets.filter((f) => faces(view, f.normal)),
    view,
  );
  return (lines) =>
    lines.flatMap((line) => {
      const [p, q] = [see(view, line.from), see(view, line.to)];
      return shown(p, q, screens).map(
        ([s, t]): VisibleLine => ({ from: along(p, q, s), to: along(p, q, t), kind: line.kind }),
      );
    });
}

const along = (p: Seen, q: Seen, t: number): Point => [
  p.at[0] + (q.at[0] - p.at[0]) * t,
  p.at[1] + (q.at[1] - p.at[1]) * t,
];

function screensOf(facets: readonly Facet[], view: View): Screens {
  const sides = new Float64Array(4 * facets.reduce((n, f) => n + f.corners.length, 0));
  const starts = new Uint32Array(facets.length + 1);
  const planes = new Float64Array(3 * facets.length);
  const boxes = new Float64Array(4 * facets.length);
  let count = 0;
  for (const { corners } of facets) {
    const seen = corners.map((c) => see(view, c));
    const plane = planeOf(seen);
    if (plane === null) continue; // edge on
    const start = starts[count] as number;
    const own = sidesOf(seen.map((s) => s.at));
    sides.set(own, start);
    boxes.set(boxRound(seen), 4 * count);
    planes.set(plane, 3 * count);
    count += 1;
    starts[count] = start + own.length;
  }
  return { sides, starts, planes, near: boxesNear(boxes.subarray(0, 4 * count)) };
}

function boxRound(seen: readonly Seen[]): readonly [number, number, number, number] {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { at } of seen) {
    x0 = Math.min(x0, at[0]);
    y0 = Math.min(y0, at[1]);
    x1 = Math.max(x1, at[0]);
    y1 = Math.max(y1, at[1]);
  }
  return [x0, y0, x1, y1];
}

function sidesOf(corners: readonly Point[]): readonly number[] {
  const turn = Math.sign(polygonArea(corners));
  const sides: number[] = [];
  for (let i = 0; i < corners.length; i++) {
    const [a, b] = [corners[i] as Point, corners[(i + 1) % corners.length] as Point];
    sides.push(a[0], a[1], (b[0] - a[0]) * turn, (b[1] - a[1]) * turn);
  }
  return sides;
}

/** Plane of a facet over the page by Newell's sums, which shrug off corners in a line. */
function planeOf(seen: readonly Seen[]): readonly [a: number, b: number, c: number] | null {
  let [nx, ny, nz] = [0, 0, 0];
  seen.forEach((p, i) => {
    const q = seen[(i + 1) % seen.length] as Seen;
    nx += (p.at[1] - q.at[1]) * (p.near + q.near);
    ny += (p.near - q.near) * (p.at[0] + q.at[0]);
    nz += (p.at[0] - q.at[0]) * (p.at[1] + q.at[1]);
  });
  const first = seen[0];
  if (first === undefined || Math.abs(nz) < 1e-9) return null;
  const [a, b] = [-nx / nz, -ny / nz];
  return [a, b, first.near - a * first.at[0] - b * first.at[1]];
}

type Span = readonly [number, number];

/** The parts of the line p q that no screen hides, as spans of 0 to 1. */
function shown(p: Seen, q: Seen, screens: Screens): readonly Span[] {
  const length = Math.hypot(q.at[0] - p.at[0], q.at[1] - p.at[1]);
  if (length < SHORT) return [];
  const [x0, x1] = [Math.min(p.at[0], q.at[0]), Math.max(p.at[0], q.at[0])];
  const [y0, y1] = [Math.min(p.at[1], q.at[1]), Math.max(p.at[1], q.at[1])];
  const hidden: Span[] = [];
  screens.near([x0, y0, x1, y1], (i) => {
    const span = behind(p, q, screens, i);
    if (span !== null) hidden.push(span);
  });
  return gaps(hidden).filter(([a, b]) => (b - a) * length > SHORT);
}

/** How far a point lies behind the plane of a screen. */
const gap = ({ planes }: Screens, i: number, { at, near }: Seen) =>
  (planes[3 * i] as number) * at[0] +
  (planes[3 * i + 1] as number) * at[1] +
  (planes[3 * i + 2] as number) -
  near -
  IN_FRONT;

/** Where the line lies inside a screen's outline and behind its plane. */
function behind(p: Seen, q: Seen, screens: Screens, i: number): Span | null {
  const [g0, g1] = [gap(screens, i, p), gap(screens, i, q)];
  if (g0 <= 0 && g1 <= 0) return null;
  const inside = clipToConvex(p.at, q.at, screens, i);
  if (inside === null) return null;
  let [from, to] = inside;
  if (g0 <= 0) from = Math.max(from, g0 / (g0 - g1));
  else if (g1 <= 0) to = Math.min(to, g0 / (g0 - g1));
  return to - from > 1e-12 ? [from, to] : null;
}

function clipToConvex([px, py]: Point, [qx, qy]: Point, { sides, starts }: Screens, k: number): Span | null {
  let from = 0;
  let to = 1;
  const end = starts[k + 1] as number;
  for (let i = starts[k] as number; i < end; i += 4) {
    const [ax, ay] = [sides[i] as number, sides[i + 1] as number];
    const [ex, ey] = [sides[i + 2] as number, sides[i + 3] as number];
    const sp = ex * (py - ay) - ey * (px - ax);
    const sq = ex * (qy - ay) - ey * (qx - ax);
    if (sp <= 0 && sq <= 0) return null;
    if (sp < 0) from = Math.max(from, sp / (sp - sq));
    else if (sq < 0) to = Math.min(to, sp / (sp - sq));
    if (to - from <= 1e-12) return null;
  }
  return [from, to];
}

function gaps(hidden: readonly Span[]): readonly Span[] {
  const found: Span[] = [];
  let from = 0;
  for (const [a, b] of hidden.toSorted((u, v) => u[0] - v[0])) {
    if (a > from) found.push([from, a]);
    from = Math.max(from, b);
  }
  if (from < 1) found.push([from, 1]);
  return found;
}
