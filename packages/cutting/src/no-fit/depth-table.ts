import type { Tracks } from './convolve.js';
import { isFree, type NoFit } from './no-fit.js';

/** What a cell says of every place in it. */
const FREE = 0;
const MIXED = 1;
const BLOCKED = 2;

/** Runs are equally near when the squares of their distances differ by no more than this share, and mm². */
const SHARE = 1 + 1e-6;
const NEARLY = 1e-9;

/**
 * A no-fit polygon made quick to ask: its box in cells, each with its class and the few runs of the border that can
 * be nearest. Their free side is to their right.
 */
export interface DepthTable {
  readonly x0: number;
  readonly y0: number;
  readonly cells: number;
  readonly perX: number;
  readonly perY: number;
  readonly kind: Uint8Array;
  /** How deep the middle of each cell lies; 0 where it is free. */
  readonly middle: Float32Array;
  /** Runs: from x, from y, dx, dy, 1 / length². */
  readonly runs: Float64Array;
  /** Where a cell's runs start in `near`. */
  readonly nearStart: Int32Array;
  readonly near: Int32Array;
}

export function depthTable(place: NoFit): DepthTable {
  const [x0, y0, x1, y1] = place.box;
  const runs = runsOf(place.border);
  const cells = Math.max(8, Math.min(32, Math.round(2.5 * Math.sqrt(runs.length / 5))));
  const [w, h] = [(x1 - x0) / cells, (y1 - y0) / cells];
  const reach = Math.sqrt(w * w + h * h) / 2;
  const kind = new Uint8Array(cells * cells);
  const middle = new Float32Array(cells * cells);
  const nearStart = new Int32Array(cells * cells + 1);
  const near: number[] = [];
  const distances = new Float64Array(runs.length / 5);
  for (let c = 0; c < cells * cells; c++) {
    const [x, y] = [x0 + ((c % cells) + 0.5) * w, y0 + (Math.floor(c / cells) + 0.5) * h];
    let least = Infinity;
    for (let i = 0; i < distances.length; i++) {
      const d = distanceTo(runs, 5 * i, x, y);
      distances[i] = d;
      if (d < least) least = d;
    }
    const free = isFree(place, x, y);
    kind[c] = least <= reach ? MIXED : free ? FREE : BLOCKED;
    middle[c] = free ? 0 : least;
    if (kind[c] !== FREE) near.push(...within(distances, least + 2 * reach));
    nearStart[c + 1] = near.length;
  }
  return {
    x0,
    y0,
    cells,
    perX: 1 / w,
    perY: 1 / h,
    kind,
    middle,
    runs,
    nearStart,
    near: Int32Array.from(near),
  };
}

/** Runs at most so far away. */
function within(distances: Float64Array, far: number): readonly number[] {
  const runs: number[] = [];
  distances.forEach((d, i) => {
    if (d <= far) runs.push(5 * i);
  });
  return runs;
}

function runsOf(border: Tracks): Float64Array {
  const runs = new Float64Array((border.length / 4) * 5);
  for (let k = 0, o = 0; k < border.length; k += 4, o += 5) {
    const [x, y] = [border[k] as number, border[k + 1] as number];
    const [dx, dy] = [(border[k + 2] as number) - x, (border[k + 3] as number) - y];
    runs.set([x, y, dx, dy, 1 / (dx * dx + dy * dy)], o);
  }
  return runs;
}

function distanceTo(runs: Float64Array, e: number, x: number, y: number): number {
  const dx = runs[e + 2] as number;
  const dy = runs[e + 3] as number;
  const ax = x - (runs[e] as number);
  const ay = y - (runs[e + 1] as number);
  const t = Math.max(0, Math.min(1, (ax * dx + ay * dy) * (runs[e + 4] as number)));
  return Math.sqrt((ax - dx * t) ** 2 + (ay - dy * t) ** 2);
}

function cellAt({ x0, y0, perX, perY, cells }: DepthTable, x: number, y: number): number {
  const cx = ((x - x0) * perX) | 0;
  const cy = ((y - y0) * perY) | 0;
  return (cy < cells ? cy : cells - 1) * cells + (cx < cells ? cx : cells - 1);
}

/** Nearly `depthAt`, at a fraction of its cost: the depth of the middle of the place's cell. */
export function roughDepthAt(table: DepthTable, x: number, y: number): number {
  return table.middle[cellAt(table, x, y)] as number;
}

/**
 * How deep a place lies in a no-fit polygon, mm: the length of the shortest way out, whose two parts are left in
 * `way`; 0 and no way where it is free. The place must be inside the table's box.
 */
export function depthAt(table: DepthTable, x: number, y: number, way: Float64Array): number {
  const c = cellAt(table, x, y);
  const kind = table.kind[c];
  if (kind === FREE) return 0;
  const runs = table.runs;
  const near = table.near;
  let least = Infinity;
  let aside = 0;
  let wayX = 0;
  let wayY = 0;
  const end = table.nearStart[c + 1] as number;
  for (let q = table.nearStart[c] as number; q < end; q++) {
    const e = near[q] as number;
    const dx = runs[e + 2] as number;
    const dy = runs[e + 3] as number;
    const ax = x - (runs[e] as number);
    const ay = y - (runs[e + 1] as number);
    const per = runs[e + 4] as number;
    const t = Math.max(0, Math.min(1, (ax * dx + ay * dy) * per));
    const ux = dx * t - ax;
    const uy = dy * t - ay;
    const d = ux * ux + uy * uy;
    if (d > least * SHARE + NEARLY) continue;
    // of runs that meet at the nearest corner the one decides whose line is further away
    const cross = dx * ay - dy * ax;
    const off = cross * Math.abs(cross) * per;
    if (d * SHARE + NEARLY < least || Math.abs(off) > Math.abs(aside)) aside = off;
    if (d >= least) continue;
    least = d;
    wayX = ux;
    wayY = uy;
  }
  if (kind === MIXED && (aside <= 0 || least < NEARLY)) return 0;
  way[0] = wayX;
  way[1] = wayY;
  return Math.sqrt(least);
}
