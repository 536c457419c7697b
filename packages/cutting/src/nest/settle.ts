import { type Floor, shapeOn } from './floor.js';
import { linesOf } from './lines.js';
import type { PairConflict } from './overlap.js';
import type { Candidate } from './walk.js';

/** How long a candidate is worked on: places tried at most, and the overlap it must get below within half of them. */
export interface SettleEffort {
  steps: number;
  beat: number;
}

/**
 * Moves a candidate to a place of least weighted overlap near by. Near a place each neighbour is a line that the piece
 * should be beyond, so that the least lies on a line or where two cross: go there, learn the lines there, go on
 * (cutting planes; Kelley 1960 for the idea). What a line claims beyond what is so at the best place is not kept: the
 * neighbour's side is not straight that far. Where nothing was learned, only part of the way is gone.
 */
export type Settle = (piece: number, at: Candidate, effort: SettleEffort) => void;

const PART = 0.4;
const LEAST_PART = 0.05;

export function settlerOf(floor: Floor, overlap: PairConflict): Settle {
  const { bed } = floor;
  const { at: probe, contacts } = overlap.probe;
  const lines = linesOf(floor.shape.length, contacts);
  return (piece, at, { steps, beat }) => {
    const { box } = shapeOn(floor, at.shape);
    const { goal } = lines;
    lines.room.set([bed.x0 - box[0], bed.y0 - box[1], bed.x1 - box[2], bed.y1 - box[3]]);
    at.sum = probe(piece, at.shape, at.x, at.y, Infinity);
    lines.start(at.x, at.y);
    let part = 1;
    for (let step = 0; step < steps && at.sum > 0; step++) {
      const hopeless = 2 * step > steps && at.sum > beat;
      if (hopeless || (part === 1 && !lines.aim(at.x, at.y, at.sum))) return;
      const x = at.x + ((goal[0] as number) - at.x) * part;
      const y = at.y + ((goal[1] as number) - at.y) * part;
      const sum = probe(piece, at.shape, x, y, Infinity);
      if (sum < at.sum) {
        at.x = x;
        at.y = y;
        at.sum = sum;
        lines.better(x, y);
        part = 1;
      } else part = lines.learn(x, y) ? 1 : part * PART;
      if (part < LEAST_PART) return;
    }
  };
}
