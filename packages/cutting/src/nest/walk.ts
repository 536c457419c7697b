import { type Floor, shapeOn } from './floor.js';
import type { PairConflict } from './overlap.js';
import type { Contacts } from './probe.js';

/** A place under trial and the weighted overlap there; changed in place by who improves it. */
export interface Candidate {
  shape: number;
  x: number;
  y: number;
  sum: number;
}

/** Steps of a walk, mm. */
export interface Stride {
  readonly longest: number;
  readonly least: number;
}

/** Improves a candidate: out of the worst neighbour first, then in shrinking steps along the axes and across. */
export type Walk = (piece: number, at: Candidate, stride: Stride) => void;

const WAYS_OUT = 8;

export function walkerOf(floor: Floor, overlap: PairConflict, random: () => number): Walk {
  const { bed } = floor;
  /** Take a step, brought back onto the bed, if it leads to less. */
  const step = (piece: number, at: Candidate, dx: number, dy: number): boolean => {
    const { box } = shapeOn(floor, at.shape);
    const x = Math.max(bed.x0 - box[0], Math.min(bed.x1 - box[2], at.x + dx));
    const y = Math.max(bed.y0 - box[1], Math.min(bed.y1 - box[3], at.y + dy));
    const sum = overlap.probe.at(piece, at.shape, x, y, at.sum);
    if (sum >= at.sum) return false;
    at.x = x;
    at.y = y;
    at.sum = sum;
    return true;
  };
  const wayOut = (piece: number, at: Candidate): boolean => {
    overlap.probe.at(piece, at.shape, at.x, at.y, Infinity);
    const { wayX, wayY } = overlap.probe.contacts;
    const worst = worstOf(overlap.probe.contacts);
    const x = wayX[worst] as number;
    const y = wayY[worst] as number;
    return step(piece, at, x * 1.0005, y * 1.0005) || step(piece, at, x / 2, y / 2);
  };
  return (piece, at, stride) => {
    for (let k = 0; k < WAYS_OUT && at.sum > 0 && wayOut(piece, at); k++);
    const steps = { x: stride.longest, y: stride.longest };
    while (Math.max(steps.x, steps.y) > stride.least && at.sum > 0) {
      const way = WAYS[(random() * WAYS.length) | 0] as (typeof WAYS)[number];
      const x = way[0] * steps.x;
      const y = way[1] * steps.y;
      const factor = step(piece, at, x, y) || step(piece, at, -x, -y) ? 1.1 : 0.5;
      if (x !== 0) steps.x *= factor;
      if (y !== 0) steps.y *= factor;
    }
  };
}

function worstOf({ count, factor, depth }: Contacts): number {
  let worst = 0;
  let most = 0;
  for (let k = 0; k < count; k++) {
    const v = (factor[k] as number) * (depth[k] as number);
    if (v <= most) continue;
    most = v;
    worst = k;
  }
  return worst;
}

/** Ways to step, each also backwards: along the axes more often than across. */
const WAYS = [
  [1, 0],
  [0, 1],
  [1, 0],
  [0, 1],
  [1, 1],
  [1, -1],
] as const;
