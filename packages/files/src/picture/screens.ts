import type { Point } from '@tinwright/core';
import { polygonArea } from '@tinwright/core/internal';
import { type BoxesNear, boxesNear } from './boxes-near.js';
import { behind, depth, type Hides, pagePlane, type Share } from './hides.js';
import type { Facet } from './surface.js';
import { type Seen, see, type View } from './view.js';

/**
 * Convex facets on the page, all numbers of a kind in one row, as a sieve has tens of thousands of them: of each four
 * numbers a side, where it starts and its run with the inside on the left; how near it is at any point, a·x + b·y + c.
 */
interface Screens {
  readonly sides: Float64Array;
  /** Where the sides of each begin, and those of the next. */
  readonly starts: Uint32Array;
  readonly planes: Float64Array;
  /** Which of them a line has to be held against. */
  readonly near: BoxesNear;
}

/** What convex facets hide. Exact: a line is cut by a facet's outline on the page and by where it dips behind its plane. */
export function screens(facets: Iterable<Facet>, view: View): Hides {
  const all = screensOf(facets, view);
  return (p, q, hidden) => {
    const [x0, x1] = [Math.min(p.at[0], q.at[0]), Math.max(p.at[0], q.at[0])];
    const [y0, y1] = [Math.min(p.at[1], q.at[1]), Math.max(p.at[1], q.at[1])];
    all.near([x0, y0, x1, y1], (i) => {
      const [d0, d1] = [depthAt(all, i, p), depthAt(all, i, q)];
      if (d0 <= 0 && d1 <= 0) return;
      const inside = clipToConvex(p.at, q.at, all, i);
      const span = inside === null ? null : behind(d0, d1, inside);
      if (span !== null) hidden(span);
    });
  };
}

/** Goes through the facets twice, for their number and for themselves, and keeps none of them. */
function screensOf(facets: Iterable<Facet>, view: View): Screens {
  let [most, corners] = [0, 0];
  for (const f of facets) [most, corners] = [most + 1, corners + f.corners.length];
  const sides = new Float64Array(4 * corners);
  const starts = new Uint32Array(most + 1);
  const planes = new Float64Array(3 * most);
  const boxes = new Float64Array(4 * most);
  let count = 0;
  for (const facet of facets) {
    const seen = facet.corners.map((c) => see(view, c));
    const plane = pagePlane(seen);
    if (plane === null) continue;
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

const depthAt = ({ planes }: Screens, i: number, at: Seen) =>
  depth(planes[3 * i] as number, planes[3 * i + 1] as number, planes[3 * i + 2] as number, at);

function clipToConvex([px, py]: Point, [qx, qy]: Point, { sides, starts }: Screens, k: number): Share | null {
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
