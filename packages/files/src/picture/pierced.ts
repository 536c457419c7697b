import type { Point } from '@tinwright/core';
import { behind, depth, type Hides, pagePlane, type Share } from './hides.js';
import type { Facet } from './surface.js';
import { see, type View } from './view.js';

const A_BAND = 8; // sides, on the average, before more bands are worth it
const MOST = 256; // bands

/**
 * What a facet with holes hides. A line is cut where it crosses a side of the outline or of a hole, and every piece is
 * hidden or not as its middle is, so that a corner that lies on the line decides nothing. Two thousand holes in
 * triangles would be slivers across half the sheet: each line met hundreds of them.
 */
export function pierced({ corners, holes = [] }: Facet, view: View): Hides {
  const plane = pagePlane(corners.map((c) => see(view, c)));
  if (plane === null) return () => undefined;
  const inside = insideOf([corners, ...holes].map((loop) => loop.map((c) => see(view, c).at)));
  return (p, q, hidden) => {
    const [d0, d1] = [depth(...plane, p), depth(...plane, q)];
    if (d0 <= 0 && d1 <= 0) return;
    for (const stretch of inside(p.at, q.at)) {
      const span = behind(d0, d1, stretch);
      if (span !== null) hidden(span);
    }
  };
}

/** The stretches of any line that lie inside an odd number of loops. */
export function insideOf(loops: readonly (readonly Point[])[]): (p: Point, q: Point) => readonly Share[] {
  const bands = bandsOf(loops);
  return (p, q) => {
    const cuts = crossings(bands, p, q).toSorted((a, b) => a - b);
    return [...cuts, 1].flatMap((to, i): readonly Share[] => {
      const from = i === 0 ? 0 : (cuts[i - 1] as number);
      const t = (from + to) / 2;
      const within = to > from && odd(bands, p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t);
      return within ? [[from, to]] : [];
    });
  };
}

/** Sides of loops, four numbers each, by the bands across the page that they reach into. */
interface Bands {
  readonly sides: Float64Array;
  readonly band: (y: number) => number;
  readonly within: readonly (readonly number[])[];
}

function bandsOf(loops: readonly (readonly Point[])[]): Bands {
  const sides = Float64Array.from(
    loops.flatMap((loop) => loop.flatMap((a, i) => [...a, ...(loop[(i + 1) % loop.length] as Point)])),
  );
  let [low, high] = [Infinity, -Infinity];
  for (let i = 1; i < sides.length; i += 2) {
    low = Math.min(low, sides[i] as number);
    high = Math.max(high, sides[i] as number);
  }
  const count = Math.max(1, Math.min(MOST, Math.floor(sides.length / 4 / A_BAND)));
  const band = (y: number) =>
    Math.max(0, Math.min(count - 1, Math.floor(((y - low) / (high - low || 1)) * count)));
  const within: number[][] = Array.from({ length: count }, () => []);
  for (let i = 0; i < sides.length; i += 4) {
    const [a, b] = [band(sides[i + 1] as number), band(sides[i + 3] as number)];
    for (let k = Math.min(a, b); k <= Math.max(a, b); k++) within[k]?.push(i);
  }
  return { sides, band, within };
}

/** Where the line p q crosses sides, between 0 and 1, in any order. */
function crossings({ sides, band, within }: Bands, [px, py]: Point, [qx, qy]: Point): readonly number[] {
  const [dx, dy] = [qx - px, qy - py];
  const l2 = dx * dx + dy * dy;
  const found: number[] = [];
  const first = band(Math.min(py, qy));
  const last = band(Math.max(py, qy));
  for (let k = first; k <= last; k++)
    for (const i of within[k] as readonly number[]) {
      const [ax, ay, bx, by] = [sides[i], sides[i + 1], sides[i + 2], sides[i + 3]] as unknown as Side;
      if (k > first && Math.min(band(ay), band(by)) < k) continue; // met in an earlier band
      const a = dx * (ay - py) - dy * (ax - px);
      const b = dx * (by - py) - dy * (bx - px);
      if (a > 0 === b > 0) continue;
      const s = a / (a - b);
      const t = ((ax + (bx - ax) * s - px) * dx + (ay + (by - ay) * s - py) * dy) / l2;
      if (t > 0 && t < 1) found.push(t);
    }
  return found;
}

type Side = readonly [ax: number, ay: number, bx: number, by: number];

/** Whether a point lies inside an odd number of loops. */
function odd({ sides, band, within }: Bands, x: number, y: number): boolean {
  let count = 0;
  for (const i of within[band(y)] as readonly number[]) {
    const [ax, ay, bx, by] = [sides[i], sides[i + 1], sides[i + 2], sides[i + 3]] as unknown as Side;
    if (ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay)) count += 1;
  }
  return count % 2 === 1;
}
