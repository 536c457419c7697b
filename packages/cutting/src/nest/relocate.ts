import { type Floor, type NestSpot, put, shapeOn, spotOf } from './floor.js';
import type { NestShape } from './kit.js';
import type { PairConflict } from './overlap.js';
import type { OverlapAt } from './probe.js';
import { settlerOf } from './settle.js';
import { type Candidate, walkerOf } from './walk.js';

/** How a piece looks for a better place. */
export interface Looking {
  /** Places anywhere. */
  readonly anywhere: number;
  /** Places round the present one. */
  readonly around: number;
  /** The best of them are settled, */
  readonly settled: number;
  /** in so many steps at most, */
  readonly steps: number;
  /** as long as they overlap less than so many times the best. */
  readonly within: number;
  /** Steps of the walk from the best: the longest and the least, shares of the mean piece's size. */
  readonly longest: number;
  readonly least: number;
}

export const LOOKING: Looking = {
  anywhere: 40,
  around: 10,
  settled: 3,
  steps: 12,
  within: 2,
  longest: 0.007,
  least: 0.00015,
};

/** Moves one piece to the place of least weighted overlap it can find; true when it moved. */
export function relocator(
  floor: Floor,
  overlap: PairConflict,
  random: () => number,
  looking: Looking,
): (piece: number) => boolean {
  const { kit, bed, shapesOf } = floor;
  const pick = (n: number) => (random() * n) | 0;
  const kept: Candidate[] = Array.from({ length: looking.settled }, () => ({ shape: 0, x: 0, y: 0, sum: 0 }));
  const scale = meanSize(floor);
  const stride = { longest: looking.longest * scale, least: looking.least * scale };
  let count = 0;

  let ask: OverlapAt = overlap.probe.at;
  const offer = (piece: number, shape: number, x: number, y: number): void => {
    const full = count === kept.length;
    const limit = full ? (kept[count - 1] as Candidate).sum : Infinity;
    const sum = ask(piece, shape, x, y, limit);
    if (sum >= limit) return;
    let k = full ? count - 1 : count++;
    const slot = kept[k] as Candidate;
    for (; k > 0 && (kept[k - 1] as Candidate).sum > sum; k--) kept[k] = kept[k - 1] as Candidate;
    kept[k] = slot;
    slot.shape = shape;
    slot.x = x;
    slot.y = y;
    slot.sum = sum;
  };

  const walk = walkerOf(floor, overlap, random);
  const settle = settlerOf(floor, overlap);
  const effort = { steps: looking.steps, beat: Infinity };
  /** Offer a place, brought back onto the bed. */
  const place = (piece: number, shape: number, x: number, y: number): void => {
    const { box } = kit.shapes[shape] as NestShape;
    if (box[2] - box[0] > bed.x1 - bed.x0 || box[3] - box[1] > bed.y1 - bed.y0) return;
    const within = (v: number, least: number, most: number) => Math.max(least, Math.min(most, v));
    offer(
      piece,
      shape,
      within(x, bed.x0 - box[0], bed.x1 - box[2]),
      within(y, bed.y0 - box[1], bed.y1 - box[3]),
    );
  };

  /** Offer places all over the bed and round the present one. */
  const sample = (piece: number, { shape, x, y }: NestSpot): void => {
    ask = overlap.probe.roughly;
    const shapes = shapesOf[floor.item[piece] as number] as readonly number[];
    for (let k = 0; k < looking.anywhere; k++) {
      const s = shapes[pick(shapes.length)] as number;
      const { box } = kit.shapes[s] as NestShape;
      const [w, h] = [bed.x1 - bed.x0 - box[2] + box[0], bed.y1 - bed.y0 - box[3] + box[1]];
      place(piece, s, bed.x0 - box[0] + random() * w, bed.y0 - box[1] + random() * h);
    }
    for (let k = 0; k < looking.around; k++) {
      const s = random() < 0.8 ? shape : (shapes[pick(shapes.length)] as number);
      const { box } = kit.shapes[s] as NestShape;
      const [w, h] = [box[2] - box[0], box[3] - box[1]];
      place(piece, s, x + (random() - 0.5) * w * 0.4, y + (random() - 0.5) * h * 0.4);
    }
  };

  return (piece) => {
    const { at, changed } = overlap.probe;
    changed();
    count = 0;
    ask = at;
    place(piece, floor.shape[piece] as number, floor.x[piece] as number, floor.y[piece] as number);
    // where its shape does not fit on the bed at all, any place is better
    const now = count === 0 ? Infinity : (kept[0] as Candidate).sum;
    sample(piece, spotOf(floor, piece));
    if (count === 0) return false;
    let best = kept[0] as Candidate;
    let least = Infinity;
    for (let k = 0; k < count && least > 0; k++) {
      const one = kept[k] as Candidate;
      effort.beat = looking.within * least;
      settle(piece, one, effort);
      if (one.sum >= least) continue;
      least = one.sum;
      best = one;
    }
    if (best.sum > 0 && best.sum < now * 1.3) walk(piece, best, stride);
    if (best.sum >= now) return false;
    put(floor, piece, best);
    overlap.moved(piece);
    return true;
  };
}

/** Root of the mean area of a piece, mm. */
function meanSize(floor: Floor): number {
  let area = 0;
  for (let i = 0; i < floor.movable; i++) area += shapeOn(floor, floor.shape[i] as number).area;
  return Math.sqrt(area / floor.movable);
}
