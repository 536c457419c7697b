import type { Floor } from './floor.js';
import type { NestShape } from './kit.js';
import { type PairDepth, pairDepthOf } from './pair-depth.js';
import { type Probe, probeOf } from './probe.js';

/**
 * How much pieces overlap: of a pair, the depth in their no-fit polygon times the roots of their areas, times a
 * weight that grows while the pair stays in conflict.
 */
export interface PairConflict {
  readonly probe: Probe;
  /** Take in a piece's new place. */
  moved(piece: number): void;
  /** Count all pairs anew; the sum without weights. */
  count(): number;
  /** The sum without weights as known. */
  total(): number;
  conflicts(piece: number): boolean;
  /** Make pairs in conflict weigh more, others forget. */
  learn(): void;
  forget(): void;
}

export function overlapOf(floor: Floor): PairConflict {
  const n = floor.shape.length;
  const bulk = bulks(floor);
  const weights = new Float64Array(n * n).fill(1);
  const depths = new Float64Array(n * n);
  const pair = pairDepthOf(floor);
  const moved = (i: number): void => {
    for (let j = 0; j < n; j++) {
      if (j === i) continue;
      const d = between(floor, pair, i, j) * (bulk[i] as number) * (bulk[j] as number);
      depths[i * n + j] = d;
      depths[j * n + i] = d;
    }
  };
  const total = (): number => {
    let sum = 0;
    for (let i = 0; i < floor.movable; i++)
      for (let j = i + 1; j < n; j++) sum += depths[i * n + j] as number;
    return sum;
  };
  return {
    probe: probeOf(floor, pair, bulk, weights),
    moved,
    total,
    count: () => {
      for (let i = 0; i < floor.movable; i++) moved(i);
      return total();
    },
    conflicts: (i) => {
      for (let k = i * n; k < i * n + n; k++) if ((depths[k] as number) > 0) return true;
      return false;
    },
    learn: () => learn(weights, depths),
    forget: () => {
      weights.fill(1);
    },
  };
}

/** Depth of two pieces as they lie. */
function between({ boxes, shape, x, y }: Floor, pair: PairDepth, i: number, j: number): number {
  const side = (piece: number, k: number) => boxes[4 * piece + k] as number;
  if (side(i, 2) <= side(j, 0) || side(i, 0) >= side(j, 2)) return 0;
  if (side(i, 3) <= side(j, 1) || side(i, 1) >= side(j, 3)) return 0;
  return pair.of(i, shape[i] as number, x[i] as number, y[i] as number, j);
}

/** Root of the area of each piece, 1 on average. */
function bulks({ kit, shape }: Floor): Float64Array {
  const roots = Float64Array.from(shape, (s) => Math.sqrt((kit.shapes[s] as NestShape).area));
  const mean = roots.reduce((a, b) => a + b, 0) / roots.length;
  return roots.map((r) => r / mean);
}

/** Factors of a pair's weight after a round: deepest, just touching, free. */
const LEARN = { most: 2, least: 1.2, free: 0.95, limit: 1e12 } as const;

function learn(weights: Float64Array, depths: Float64Array): void {
  let deepest = 0;
  for (let k = 0; k < depths.length; k++) deepest = Math.max(deepest, depths[k] as number);
  for (let k = 0; k < depths.length; k++) {
    const d = depths[k] as number;
    const w = weights[k] as number;
    if (d > 0)
      weights[k] = Math.min(LEARN.limit, w * (LEARN.least + ((LEARN.most - LEARN.least) * d) / deepest));
    else if (w > 1) weights[k] = Math.max(1, w * LEARN.free);
  }
}
