import type { Point } from '@tinwright/core';
import type { Tracks } from './convolve.js';
import { type NoFitRing, ringArea } from './ring.js';

/** Ends of runs nearer than this are one corner, mm. */
const JOINT = 2e-3;

/** Smaller rings are no place for anything, mm². */
const LEAST = 0.01;

/** The runs of a border joined to rings, the largest first; runs that do not close are left out. */
export function chained(border: Tracks): readonly NoFitRing[] {
  const starts = startsOf(border);
  const used = new Set<number>();
  const rings: NoFitRing[] = [];
  for (let first = 0; first < border.length; first += 4) {
    if (used.has(first)) continue;
    const ring: Point[] = [];
    let at: number | undefined = first;
    for (let k: number | undefined = first; k !== undefined; k = following(border, starts, used, k)) {
      used.add(k);
      ring.push([border[k] as number, border[k + 1] as number]);
      at = k;
    }
    if (ring.length > 2 && joins(border, at, first) && Math.abs(ringArea(ring)) > LEAST) rings.push(ring);
  }
  return rings.sort((a, b) => Math.abs(ringArea(b)) - Math.abs(ringArea(a)));
}

const cell = (v: number) => Math.round(v / JOINT);

function startsOf(border: Tracks): ReadonlyMap<string, readonly number[]> {
  const starts = new Map<string, number[]>();
  for (let k = 0; k < border.length; k += 4) {
    const key = `${cell(border[k] as number)} ${cell(border[k + 1] as number)}`;
    const here = starts.get(key);
    if (here === undefined) starts.set(key, [k]);
    else here.push(k);
  }
  return starts;
}

/** The unused run that goes on where run `k` ends, the one furthest to the right where there are more. */
function following(
  border: Tracks,
  starts: ReadonlyMap<string, readonly number[]>,
  used: ReadonlySet<number>,
  k: number,
): number | undefined {
  const [cx, cy] = [cell(border[k + 2] as number), cell(border[k + 3] as number)];
  const open = [-1, 0, 1]
    .flatMap((i) => [-1, 0, 1].flatMap((j) => starts.get(`${cx + i} ${cy + j}`) ?? []))
    .filter((q) => !used.has(q));
  return open.sort((p, q) => turnTo(border, k, p) - turnTo(border, k, q))[0];
}

function turnTo(border: Tracks, k: number, q: number): number {
  const way = (r: number) =>
    Math.atan2(
      (border[r + 3] as number) - (border[r + 1] as number),
      (border[r + 2] as number) - (border[r] as number),
    );
  const turn = way(q) - way(k);
  return Math.atan2(Math.sin(turn), Math.cos(turn));
}

function joins(border: Tracks, end: number, start: number): boolean {
  const [x, y] = [
    (border[end + 2] as number) - (border[start] as number),
    (border[end + 3] as number) - (border[start + 1] as number),
  ];
  return Math.abs(x) < 2 * JOINT && Math.abs(y) < 2 * JOINT;
}
