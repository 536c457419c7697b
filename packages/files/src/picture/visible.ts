import type { Point } from '@tinwright/core';
import { polygonArea } from '@tinwright/core/internal';
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

/** A facet on the page, with how near it is at any point: near = a·x + b·y + c. */
interface Screen {
  readonly corners: readonly Point[];
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly box: readonly [number, number, number, number];
}

/**
 * Lines of a surface less what its facets hide. Exact: every line is cut by every facet's outline on the page and
 * by where it dips behind the facet's plane; nothing is painted over.
 */
export function visibleLines({ facets, lines }: Surface, view: View): readonly VisibleLine[] {
  const screens = facets.filter((f) => faces(view, f.normal)).flatMap((f) => screenOf(f, view));
  return lines.flatMap((line) => {
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

function screenOf(facet: Facet, view: View): readonly Screen[] {
  const seen = facet.corners.map((c) => see(view, c));
  const plane = planeOf(seen);
  if (plane === null) return []; // edge on
  const corners = seen.map((s) => s.at);
  const [xs, ys] = [corners.map((c) => c[0]), corners.map((c) => c[1])];
  return [{ corners, ...plane, box: [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] }];
}

/** Plane of a facet over the page by Newell's sums, which shrug off corners in a line. */
function planeOf(seen: readonly Seen[]): { a: number; b: number; c: number } | null {
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
  return { a, b, c: first.near - a * first.at[0] - b * first.at[1] };
}

type Span = readonly [number, number];

/** The parts of the line p q that no screen hides, as spans of 0 to 1. */
function shown(p: Seen, q: Seen, screens: readonly Screen[]): readonly Span[] {
  const length = Math.hypot(q.at[0] - p.at[0], q.at[1] - p.at[1]);
  if (length < SHORT) return [];
  const [x0, x1] = [Math.min(p.at[0], q.at[0]), Math.max(p.at[0], q.at[0])];
  const [y0, y1] = [Math.min(p.at[1], q.at[1]), Math.max(p.at[1], q.at[1])];
  const hidden: Span[] = [];
  for (const s of screens) {
    if (s.box[0] > x1 || s.box[2] < x0 || s.box[1] > y1 || s.box[3] < y0) continue;
    const span = behind(p, q, s);
    if (span !== null) hidden.push(span);
  }
  return gaps(hidden).filter(([a, b]) => (b - a) * length > SHORT);
}

/** Where the line lies inside the screen's outline and behind its plane. */
function behind(p: Seen, q: Seen, s: Screen): Span | null {
  const inside = clipToConvex(p.at, q.at, s.corners);
  if (inside === null) return null;
  const gap = ({ at, near }: Seen) => s.a * at[0] + s.b * at[1] + s.c - near - IN_FRONT;
  const [g0, g1] = [gap(p), gap(q)];
  let [from, to] = inside;
  if (g0 <= 0 && g1 <= 0) return null;
  if (g0 <= 0) from = Math.max(from, g0 / (g0 - g1));
  else if (g1 <= 0) to = Math.min(to, g0 / (g0 - g1));
  return to - from > 1e-12 ? [from, to] : null;
}

function clipToConvex(p: Point, q: Point, corners: readonly Point[]): Span | null {
  let [from, to] = [0, 1];
  const turn = Math.sign(polygonArea(corners));
  for (let i = 0; i < corners.length; i++) {
    const [a, b] = [corners[i] as Point, corners[(i + 1) % corners.length] as Point];
    const [ex, ey] = [(b[0] - a[0]) * turn, (b[1] - a[1]) * turn];
    const side = (v: Point) => ex * (v[1] - a[1]) - ey * (v[0] - a[0]);
    const [sp, sq] = [side(p), side(q)];
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
