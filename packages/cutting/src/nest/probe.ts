import type { Floor } from './floor.js';
import { type Near, nearOf } from './near.js';
import type { PairDepth } from './pair-depth.js';

/** Weighted overlap of a piece at a place; stops early past `limit`. */
export type OverlapAt = (piece: number, shape: number, x: number, y: number, limit: number) => number;

/** Whom a piece overlaps at the place probed last, one entry a neighbour; whole where the probe did not stop early. */
export interface Contacts {
  count: number;
  readonly piece: Int32Array;
  /** Weight of the pair. */
  readonly factor: Float64Array;
  readonly depth: Float64Array;
  /** The way out: two parts, each as long as the depth together. */
  readonly wayX: Float64Array;
  readonly wayY: Float64Array;
}

/** What a piece would overlap. */
export interface Probe {
  readonly at: OverlapAt;
  /** Nearly the same, for choosing among many places. */
  readonly roughly: OverlapAt;
  readonly contacts: Contacts;
  /** Pieces or weights have changed since the last probe. */
  readonly changed: () => void;
}

/** @param bulk factor of each piece @param weights factor of each pair, n × n */
export function probeOf(floor: Floor, pair: PairDepth, bulk: Float64Array, weights: Float64Array): Probe {
  const { boxes } = floor;
  const n = floor.shape.length;
  const sizes = Float64Array.from(floor.kit.shapes.flatMap((s) => s.box));
  const contacts: Contacts = {
    count: 0,
    piece: new Int32Array(n),
    factor: new Float64Array(n),
    depth: new Float64Array(n),
    wayX: new Float64Array(n),
    wayY: new Float64Array(n),
  };
  const near: Near = nearOf(floor, sizes);
  const at = (i: number, shape: number, x: number, y: number, limit: number): number => {
    const k = 4 * shape;
    const x0 = x + (sizes[k] as number);
    const y0 = y + (sizes[k + 1] as number);
    const x1 = x + (sizes[k + 2] as number);
    const y1 = y + (sizes[k + 3] as number);
    const count = near.round(i, shape, x, y);
    const row = i * n;
    const own = bulk[i] as number;
    let sum = 0;
    let met = 0;
    for (let q = 0; q < count; q++) {
      const j = near.pieces[q] as number;
      const b = 4 * j;
      const besides = x1 <= (boxes[b] as number) || x0 >= (boxes[b + 2] as number);
      if (besides || y1 <= (boxes[b + 1] as number) || y0 >= (boxes[b + 3] as number)) continue;
      const d = pair.of(i, shape, x, y, j);
      if (d === 0) continue;
      const factor = (weights[row + j] as number) * own * (bulk[j] as number);
      sum += d * factor;
      if (sum >= limit) return sum;
      contacts.piece[met] = j;
      contacts.factor[met] = factor;
      contacts.depth[met] = d;
      contacts.wayX[met] = pair.way[0] as number;
      contacts.wayY[met++] = pair.way[1] as number;
    }
    contacts.count = met;
    return sum;
  };
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
  return { at, roughly, contacts, changed: near.forget };
}
