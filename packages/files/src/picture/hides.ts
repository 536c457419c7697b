import type { Seen } from './view.js';

/** A stretch of a line, 0 at its start and 1 at its end. */
export type Share = readonly [from: number, to: number];

/** Tells the stretches of the line p q that something hides; they may overlap. */
export type Hides = (p: Seen, q: Seen, hidden: (span: Share) => void) => void;

/** How near a plane is to the viewer at a point of the page: a·x + b·y + c. */
export type PagePlane = readonly [a: number, b: number, c: number];

const IN_FRONT = 1e-3; // mm towards the viewer before a facet hides a line: lines lie on facets

/** How far a point lies behind a plane, less what a line may lie deep without being hidden. mm */
export const depth = (a: number, b: number, c: number, { at, near }: Seen): number =>
  a * at[0] + b * at[1] + c - near - IN_FRONT;

/** Of a stretch the part that lies behind a plane, by the depths of the line's ends. */
export function behind(d0: number, d1: number, [from, to]: Share): Share | null {
  if (d0 <= 0 && d1 <= 0) return null;
  const low = d0 <= 0 ? Math.max(from, d0 / (d0 - d1)) : from;
  const high = d1 <= 0 ? Math.min(to, d0 / (d0 - d1)) : to;
  return high - low > 1e-12 ? [low, high] : null;
}

/** Plane of a facet over the page by Newell's sums, which shrug off corners in a line; null for one seen edge on. */
export function pagePlane(seen: readonly Seen[]): PagePlane | null {
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
