import type { Floor } from './floor.js';
import type { PairDepth } from './pair-depth.js';

/** Weighted overlap of a piece at a place; stops early past `limit`. */
export type OverlapAt = (piece: number, shape: number, x: number, y: number, limit: number) => number;

/** What a piece would overlap. */
export interface Probe {
  readonly at: OverlapAt;
  /** Nearly the same, for choosing among many places. */
  readonly roughly: OverlapAt;
  /** The way out of the worst neighbour at the place probed last: its x and y. */
  readonly way: Float64Array;
}

/** @param bulk factor of each piece @param weights factor of each pair, n × n */
export function probeOf(floor: Floor, pair: PairDepth, bulk: Float64Array, weights: Float64Array): Probe {
  const { boxes } = floor;
  const n = floor.shape.length;
  const sizes = Float64Array.from(floor.kit.shapes.flatMap((s) => s.box));
  const way = new Float64Array(2);
  const at = (i: number, shape: number, x: number, y: number, limit: number): number => {
    const k = 4 * shape;
    const x0 = x + (sizes[k] as number);
    const y0 = y + (sizes[k + 1] as number);
    const x1 = x + (sizes[k + 2] as number);
    const y1 = y + (sizes[k + 3] as number);
    const row = i * n;
    const own = bulk[i] as number;
    let sum = 0;
    let worst = 0;
    for (let j = 0, b = 0; j < n; j++, b += 4) {
      const besides = x1 <= (boxes[b] as number) || x0 >= (boxes[b + 2] as number);
      if (besides || y1 <= (boxes[b + 1] as number) || y0 >= (boxes[b + 3] as number) || j === i) continue;
      const d = pair.of(i, shape, x, y, j);
      if (d === 0) continue;
      const v = d * (weights[row + j] as number) * own * (bulk[j] as number);
      sum += v;
      if (sum >= limit) return sum;
      if (v <= worst) continue;
      worst = v;
      way[0] = pair.way[0] as number;
      way[1] = pair.way[1] as number;
    }
    return sum;
  };
  // the loop stands twice: a call in it for what differs costs more than the rest
  const roughly = (i: number, shape: number, x: number, y: number, limit: number): number => {
    const k = 4 * shape;
    const x0 = x + (sizes[k] as number);
    const y0 = y + (sizes[k + 1] as number);
    const x1 = x + (sizes[k + 2] as number);
    const y1 = y + (sizes[k + 3] as number);
    const row = i * n;
    const most = limit / (bulk[i] as number);
    let sum = 0;
    for (let j = 0, b = 0; j < n && sum < most; j++, b += 4) {
      const besides = x1 <= (boxes[b] as number) || x0 >= (boxes[b + 2] as number);
      if (besides || y1 <= (boxes[b + 1] as number) || y0 >= (boxes[b + 3] as number) || j === i) continue;
      sum += pair.roughly(i, shape, x, y, j) * (weights[row + j] as number) * (bulk[j] as number);
    }
    return sum * (bulk[i] as number);
  };
  return { at, roughly, way };
}
