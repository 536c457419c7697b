import type { Point } from '@tinwright/core';
import type { NoFitRing } from './ring.js';

/** Directed sides, four numbers each: from x, from y, to x, to y. mm. */
export type Tracks = Float64Array;

/**
 * Convolution of two rings (Guibas, Ramshaw & Stolfi 1983): every side of one carried along the corners of the
 * other whose turn takes in its direction. The tracks make closed walks; how often they wind round a point tells
 * in how many pieces A and the reflected B laid there meet. Exact on the grid of steps. About n + m tracks for
 * convex rings instead of the n · m of a sum pair by pair.
 */
export function convolve(a: NoFitRing, b: NoFitRing): Tracks {
  const tracks: number[] = [];
  carry(a, b, 'from-first', tracks);
  carry(b, a, 'after-first', tracks);
  return Float64Array.from(tracks);
}

/** Where parallel sides belong: each to one of the two rings' turns, so that no track is said twice. */
type Bound = 'from-first' | 'after-first';

function carry(corners: NoFitRing, sides: NoFitRing, bound: Bound, tracks: number[]): void {
  const directions = sides.map((p, j) => between(p, sides[(j + 1) % sides.length] as Point));
  corners.forEach((p, i) => {
    const before = between(corners[(i + corners.length - 1) % corners.length] as Point, p);
    const after = between(p, corners[(i + 1) % corners.length] as Point);
    const turn = before[0] * after[1] - before[1] * after[0];
    if (turn === 0) return;
    directions.forEach((d, j) => {
      const left = turn > 0;
      if (!within(d, left ? before : after, left ? after : before, bound)) return;
      const [s, e] = [sides[j] as Point, sides[(j + 1) % sides.length] as Point];
      const [from, to] = left ? [s, e] : [e, s]; // a turn to the right runs backwards
      tracks.push(p[0] + from[0], p[1] + from[1], p[0] + to[0], p[1] + to[1]);
    });
  });
}

const between = (p: Point, q: Point): Point => [q[0] - p[0], q[1] - p[1]];

/** Order of directions counter-clockwise from +x: negative when `a` comes first, 0 when they are the same. */
function order(a: Point, b: Point): number {
  const half = (v: Point) => (v[1] > 0 || (v[1] === 0 && v[0] > 0) ? 0 : 1);
  return half(a) - half(b) || Math.sign(b[0] * a[1] - b[1] * a[0]);
}

/** Does direction `d` lie in the counter-clockwise turn from `first` to `last`? */
function within(d: Point, first: Point, last: Point, bound: Bound): boolean {
  const [toFirst, toLast] = [order(d, first), order(d, last)];
  if (toFirst === 0) return bound === 'from-first';
  if (toLast === 0) return bound === 'after-first';
  return order(first, last) < 0 ? toFirst > 0 && toLast < 0 : toFirst > 0 || toLast < 0;
}
