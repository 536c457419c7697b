import { type Floor, laidOn, layAgain } from './floor.js';
import type { PairConflict } from './overlap.js';

/** When to give up. */
export interface Patience {
  /** Rounds without a better sum before the pieces are laid as they lay at the best. */
  readonly rounds: number;
  /** How often that may happen in a row. */
  readonly strikes: number;
}

/** Steps of a search: told of every round, says when to stop. */
export type Pulse = (moves: number) => 'go' | 'stop';

/**
 * Take away all overlap by moving one piece in conflict after the other to its place of least weighted overlap
 * (guided local search; Egeblad, Nielsen & Odgaard 2007, Umetani et al. 2009). True when none is left; else the
 * pieces lie as they lay at the least sum.
 */
export function separate(
  floor: Floor,
  overlap: PairConflict,
  relocate: (piece: number) => boolean,
  random: () => number,
  patience: Patience,
  pulse: Pulse,
): boolean {
  overlap.forget();
  let least = overlap.count();
  if (least === 0) return true;
  let best = laidOn(floor);
  const order = Int32Array.from({ length: floor.movable }, (_, i) => i);
  for (let strike = 0; strike < patience.strikes; strike++) {
    const before = least;
    for (let idle = 0; idle < patience.rounds; idle++) {
      shuffle(order, random);
      const moves = round(order, overlap, relocate);
      const sum = overlap.total();
      if (sum === 0) return true;
      if (sum < WORTH * least) idle = -1;
      if (sum < least) {
        least = sum;
        best = laidOn(floor);
      }
      overlap.learn();
      if (pulse(moves) === 'go') continue;
      layAgain(floor, best);
      return false;
    }
    if (least < WORTH * before) strike = -1;
    layAgain(floor, best);
    overlap.count();
  }
  return false;
}

/** A sum below this share of the best one is worth going on for. */
const WORTH = 0.98;

/** Move every piece in conflict once; how many that were. */
function round(order: Int32Array, overlap: PairConflict, relocate: (piece: number) => boolean): number {
  let moves = 0;
  for (const piece of order) {
    if (!overlap.conflicts(piece)) continue;
    relocate(piece);
    moves++;
  }
  return moves;
}

function shuffle(order: Int32Array, random: () => number): void {
  for (let i = order.length - 1; i > 0; i--) {
    const j = (random() * (i + 1)) | 0;
    const t = order[i] as number;
    order[i] = order[j] as number;
    order[j] = t;
  }
}
