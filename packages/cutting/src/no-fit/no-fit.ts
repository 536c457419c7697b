import { borderOf } from './boundary.js';
import { convolve, type Tracks } from './convolve.js';
import { type NoFitRing, type Region, reflected } from './ring.js';
import { type Bands, bandsOf, windingAt } from './winding.js';

/**
 * One rule of where a moving region is free of a fixed one: the places round which the tracks wind `free` times.
 * Outsides give places beside one another (0); each hole gives places inside it (−1).
 */
interface Rule {
  readonly bands: Bands;
  readonly free: number;
}

/**
 * The no-fit polygon of a fixed and a moving region: where the moving one's origin may not lie, the fixed one's
 * origin at (0, 0). It is not traced as polygons: a place is asked of the winding, which is always closed and
 * exact, and the border is a bag of runs, good for distances. Touching is allowed.
 */
export interface NoFit {
  readonly rules: readonly Rule[];
  readonly border: Tracks;
  readonly box: readonly [x0: number, y0: number, x1: number, y1: number];
}

/** Build it from regions on the grid of steps. */
export function noFit(fixed: Region, moving: Region): NoFit {
  const away: Region = { outer: reflected(moving.outer), holes: moving.holes.map(reflected) };
  const beside: Rule = { bands: bandsOf(convolve(fixed.outer, away.outer)), free: 0 };
  const inside = [
    ...fixed.holes.filter((h) => larger(h, moving.outer)).map((h) => convolve(h, away.outer)),
    ...away.holes.filter((h) => larger(h, fixed.outer)).map((h) => convolve(fixed.outer, h)),
  ].map((tracks): Rule => ({ bands: bandsOf(tracks), free: -1 }));
  const rules = [beside, ...inside];
  const runs = rules.map((r) => borderOf(r.bands, r.free));
  const border = Float64Array.from(runs.flatMap((r) => [...r]));
  return { rules, border, box: spanOf(beside.bands.tracks) };
}

/** True when the moving region may lie there. */
export function isFree({ rules }: NoFit, x: number, y: number): boolean {
  return rules.some((r) => windingAt(r.bands, x, y) === r.free);
}

/** Only what is smaller than a hole can be inside it; only then does the winding tell inside from around. */
function larger(hole: NoFitRing, other: NoFitRing): boolean {
  const span = (ring: NoFitRing, axis: 0 | 1) =>
    Math.max(...ring.map((p) => p[axis])) - Math.min(...ring.map((p) => p[axis]));
  return span(hole, 0) > span(other, 0) && span(hole, 1) > span(other, 1);
}

function spanOf(t: Tracks): readonly [number, number, number, number] {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let k = 0; k < t.length; k += 2) {
    x0 = Math.min(x0, t[k] as number);
    x1 = Math.max(x1, t[k] as number);
    y0 = Math.min(y0, t[k + 1] as number);
    y1 = Math.max(y1, t[k + 1] as number);
  }
  return [x0, y0, x1, y1];
}
