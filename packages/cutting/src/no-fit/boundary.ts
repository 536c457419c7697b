import type { Tracks } from './convolve.js';
import { type Bands, windingAt } from './winding.js';

/** Width of a free gap that is worth anything, mm; narrower ones count as filled. */
const GAP = 1 / 4096;

/** Shorter runs are left out: their neighbours stand in for them. mm */
const SHORTEST = 1e-6;

/**
 * The border of the places whose winding is `free`: runs of the tracks with a free place on one side only, which is
 * to their right.
 * Rings without area, which a union of polygons would leave deep inside, have a blocked place on both sides
 * and are no border.
 */
export function borderOf(bands: Bands, free: number): Tracks {
  const t = bands.tracks;
  const cuts = cutsOf(t);
  const seen = new Set<string>();
  const border: number[] = [];
  for (let k = 0; k < t.length; k += 4) {
    const [x0, y0, x1, y1] = [t[k], t[k + 1], t[k + 2], t[k + 3]] as [number, number, number, number];
    const [dx, dy] = [x1 - x0, y1 - y0];
    const length = Math.sqrt(dx * dx + dy * dy);
    const stops = [0, ...(cuts[k / 4] as number[]).sort((a, b) => a - b), 1];
    for (let i = 1; i < stops.length; i++) {
      const [from, to] = [stops[i - 1] as number, stops[i] as number];
      if ((to - from) * length < SHORTEST) continue;
      const [mx, my] = [x0 + ((from + to) / 2) * dx, y0 + ((from + to) / 2) * dy];
      const [nx, ny] = [(dy / length) * GAP, (-dx / length) * GAP];
      const right = windingAt(bands, mx + nx, my + ny) === free;
      const left = windingAt(bands, mx - nx, my - ny) === free;
      if (right === left) continue;
      const key = `${Math.round(mx * 1e5)} ${Math.round(my * 1e5)}`;
      if (seen.has(key)) continue; // tracks that run over one another
      seen.add(key);
      const [a, b] = right ? [from, to] : [to, from];
      border.push(x0 + a * dx, y0 + a * dy, x0 + b * dx, y0 + b * dy);
    }
  }
  return Float64Array.from(border);
}

/** For every track, where along it (0 to 1) another one crosses, touches or runs along it. */
function cutsOf(t: Tracks): readonly number[][] {
  const n = t.length / 4;
  const cuts = Array.from({ length: n }, (): number[] => []);
  const left = (i: number) => Math.min(t[4 * i] as number, t[4 * i + 2] as number);
  const right = (i: number) => Math.max(t[4 * i] as number, t[4 * i + 2] as number);
  const order = Array.from({ length: n }, (_, i) => i).sort((a, b) => left(a) - left(b));
  order.forEach((i, at) => {
    const end = right(i);
    for (let q = at + 1; q < n; q++) {
      const j = order[q] as number;
      if (left(j) > end) break;
      meet(t, i, j, cuts);
    }
  });
  return cuts;
}

function meet(t: Tracks, i: number, j: number, cuts: readonly number[][]): void {
  const [a, b] = [4 * i, 4 * j];
  const [ay0, ay1, by0, by1] = [t[a + 1], t[a + 3], t[b + 1], t[b + 3]] as [number, number, number, number];
  if (Math.max(ay0, ay1) < Math.min(by0, by1) || Math.max(by0, by1) < Math.min(ay0, ay1)) return;
  const [ax, bx] = [t[a] as number, t[b] as number];
  const [ux, uy, vx, vy] = [(t[a + 2] as number) - ax, ay1 - ay0, (t[b + 2] as number) - bx, by1 - by0];
  const [wx, wy] = [bx - ax, by0 - ay0];
  const det = ux * vy - uy * vx;
  if (det !== 0) {
    const [s, r] = [(wx * vy - wy * vx) / det, (wx * uy - wy * ux) / det];
    if (s < 0 || s > 1 || r < 0 || r > 1) return;
    cuts[i]?.push(s);
    cuts[j]?.push(r);
  } else if (wx * uy === wy * ux) {
    const [uu, vv] = [ux * ux + uy * uy, vx * vx + vy * vy];
    const onto = (px: number, py: number) => (px * ux + py * uy) / uu;
    for (const s of [onto(wx, wy), onto(wx + vx, wy + vy)]) if (s > 0 && s < 1) cuts[i]?.push(s);
    const back = (px: number, py: number) => (px * vx + py * vy) / vv;
    for (const r of [back(-wx, -wy), back(ux - wx, uy - wy)]) if (r > 0 && r < 1) cuts[j]?.push(r);
  }
}
