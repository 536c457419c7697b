import type { Tracks } from './convolve.js';
import { isFree, type NoFit } from './no-fit.js';
import { windingAt } from './winding.js';

/** What a cell says of every place in it. */
const FREE = 0;
const MIXED = 1;
const BLOCKED = 2;

/**
 * A no-fit polygon made quick to ask: its box in cells, each with its class, the few runs of the border that can be
 * nearest, and, where the class is mixed, what decides between free and blocked: the winding at the cell's anchor
 * and the tracks that pass through the cell.
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
  /** Where a cell's rules start in `rules`. */
  readonly rulesStart: Int32Array;
  /** Rule by rule: the winding at the anchor less the free one, how many tracks, the tracks through the cell. */
  readonly rules: Int32Array;
  readonly tracks: Float64Array;
}

/** The place in a cell from which the winding is counted, as shares of its sides: on no likely side of anything. */
const ANCHOR_X = 0.5123;
const ANCHOR_Y = 0.4871;

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
  const rulesStart = new Int32Array(cells * cells + 1);
  const rules: number[] = [];
  const offsets = rulesOffsets(place);
  const distances = new Float64Array(runs.length / 5);
  for (let c = 0; c < cells * cells; c++) {
    const [left, low] = [x0 + (c % cells) * w, y0 + Math.floor(c / cells) * h];
    const [x, y] = [left + w / 2, low + h / 2];
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
    if (kind[c] === MIXED) rules.push(...decide(place, offsets, [left, low, left + w, low + h]));
    rulesStart[c + 1] = rules.length;
  }
  const tracks = Float64Array.from(place.rules.flatMap((r) => [...r.bands.tracks]));
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
    rulesStart,
    rules: Int32Array.from(rules),
    tracks,
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

const rulesOffsets = ({ rules }: NoFit) =>
  rules.map((_, i) => rules.slice(0, i).reduce((sum, r) => sum + r.bands.tracks.length, 0));

/** Every rule of a cell as the winding at its anchor, less the free one, and the tracks through the cell. */
function decide(
  { rules }: NoFit,
  offsets: readonly number[],
  [x0, y0, x1, y1]: readonly [number, number, number, number],
): readonly number[] {
  const [ax, ay] = [x0 + (x1 - x0) * ANCHOR_X, y0 + (y1 - y0) * ANCHOR_Y];
  return rules.flatMap(({ bands, free }, r) => {
    const t = bands.tracks;
    const through: number[] = [];
    for (let k = 0; k < t.length; k += 4)
      if (passes(t, k, x0, y0, x1, y1)) through.push((offsets[r] as number) + k);
    return [windingAt(bands, ax, ay) - free, through.length, ...through];
  });
}

/** Does a track share a place with a box, its rim included? */
function passes(t: Tracks, k: number, x0: number, y0: number, x1: number, y1: number): boolean {
  const [ax, ay, bx, by] = [t[k], t[k + 1], t[k + 2], t[k + 3]] as [number, number, number, number];
  if (Math.max(ax, bx) < x0 || Math.min(ax, bx) > x1 || Math.max(ay, by) < y0 || Math.min(ay, by) > y1)
    return false;
  const side = (x: number, y: number) => Math.sign((bx - ax) * (y - ay) - (by - ay) * (x - ax));
  return Math.abs(side(x0, y0) + side(x1, y0) + side(x1, y1) + side(x0, y1)) < 4;
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
  if (kind === FREE || (kind === MIXED && freeIn(table, c, x, y))) return 0;
  const runs = table.runs;
  const near = table.near;
  let least = Infinity;
  let wayX = 0;
  let wayY = 0;
  const end = table.nearStart[c + 1] as number;
  for (let q = table.nearStart[c] as number; q < end; q++) {
    const e = near[q] as number;
    const dx = runs[e + 2] as number;
    const dy = runs[e + 3] as number;
    const ax = x - (runs[e] as number);
    const ay = y - (runs[e + 1] as number);
    const t = Math.max(0, Math.min(1, (ax * dx + ay * dy) * (runs[e + 4] as number)));
    const ux = dx * t - ax;
    const uy = dy * t - ay;
    const d = ux * ux + uy * uy;
    if (d < least) {
      least = d;
      wayX = ux;
      wayY = uy;
    }
  }
  way[0] = wayX;
  way[1] = wayY;
  return Math.sqrt(least);
}

/** By every rule, the winding at the anchor corrected by the tracks crossed on the way from there. */
function freeIn(table: DepthTable, c: number, x: number, y: number): boolean {
  const rules = table.rules;
  const t = table.tracks;
  const cx = c % table.cells;
  const ax = table.x0 + (cx + ANCHOR_X) / table.perX;
  const ay = table.y0 + ((c - cx) / table.cells + ANCHOR_Y) / table.perY;
  const px = x - ax;
  const py = y - ay;
  const end = table.rulesStart[c + 1] as number;
  for (let q = table.rulesStart[c] as number; q < end; ) {
    let winding = rules[q] as number;
    const last = q + 2 + (rules[q + 1] as number);
    for (q += 2; q < last; q++) {
      const k = rules[q] as number;
      const ux = (t[k] as number) - ax;
      const uy = (t[k + 1] as number) - ay;
      const vx = (t[k + 2] as number) - ax;
      const vy = (t[k + 3] as number) - ay;
      const left = px * uy - py * ux > 0;
      if (left === px * vy - py * vx > 0) continue;
      const dx = vx - ux;
      const dy = vy - uy;
      if (dy * ux - dx * uy > 0 === dx * (py - uy) - dy * (px - ux) > 0) continue;
      winding += left ? 1 : -1;
    }
    if (winding === 0) return true;
  }
  return false;
}
