import type { Contacts } from './probe.js';

/**
 * Neighbours as straight lines, learned from the contacts of places probed: to be free of one, a piece has to lie
 * beyond it. Kept in arrays that are changed in place.
 */
export interface Lines {
  /** Least x, least y, most x, most y of the piece's place on the bed; to be set first. */
  readonly room: Float64Array;
  /** Where `aim` leads. */
  readonly goal: Float64Array;
  /** Forget all; the place probed last is the best. */
  start(x: number, y: number): void;
  /** The place probed last, whole, is better than the best. */
  better(x: number, y: number): void;
  /** The place probed last, whole, is worse than the best: was there anything new? */
  learn(x: number, y: number): boolean;
  /** Find the place of least overlap by the lines; false where that is hardly less than `sum`. */
  aim(x: number, y: number, sum: number): boolean;
}

/** Lines kept at most: enough for a piece wedged between many. */
const MOST = 20;

/** A step that takes less than this share of the overlap away is not worth asking for. */
const WORTH = 1e-3;

/** Lengths below this are none, mm. */
const NONE = 1e-6;

/** @param n how many pieces there are @param contacts those of the place probed last */
export function linesOf(n: number, contacts: Contacts): Lines {
  const room = new Float64Array(4);
  const goal = new Float64Array(2);
  // to be free of `owner`, nx·x + ny·y has to be at least `level`
  const nx = new Float64Array(MOST);
  const ny = new Float64Array(MOST);
  const level = new Float64Array(MOST);
  const factor = new Float64Array(MOST);
  const owner = new Int32Array(MOST);
  let count = 0;
  // the best place, and how deep it lies in every neighbour
  const best = new Float64Array(2);
  const truth = new Float64Array(n);

  /** How much further a line lies than it may, since the best place is no deeper in its neighbour than that. */
  const lies = (x: number, y: number, at: number, j: number): boolean =>
    at - x * (best[0] as number) - y * (best[1] as number) > NONE + 1.001 * (truth[j] as number);

  const known = (x: number, y: number, at: number, j: number): boolean => {
    for (let k = 0; k < count; k++) {
      if (owner[k] !== j) continue;
      if (Math.abs((nx[k] as number) - x) + Math.abs((ny[k] as number) - y) > NONE) continue;
      if (Math.abs((level[k] as number) - at) < NONE * (1 + Math.abs(at))) return true;
    }
    return false;
  };

  const learn = (x: number, y: number): boolean => {
    const before = count;
    for (let k = 0; k < contacts.count && count < MOST; k++) {
      const d = contacts.depth[k] as number;
      const ux = (contacts.wayX[k] as number) / d;
      const uy = (contacts.wayY[k] as number) / d;
      const at = ux * x + uy * y + d;
      const j = contacts.piece[k] as number;
      if (lies(ux, uy, at, j) || known(ux, uy, at, j)) continue;
      nx[count] = ux;
      ny[count] = uy;
      level[count] = at;
      factor[count] = contacts.factor[k] as number;
      owner[count++] = j;
    }
    return count > before;
  };

  const better = (x: number, y: number): void => {
    for (let k = 0; k < count; k++) truth[owner[k] as number] = 0;
    for (let k = 0; k < contacts.count; k++) truth[contacts.piece[k] as number] = contacts.depth[k] as number;
    best[0] = x;
    best[1] = y;
    let kept = 0;
    for (let k = 0; k < count; k++) {
      if (lies(nx[k] as number, ny[k] as number, level[k] as number, owner[k] as number)) continue;
      nx[kept] = nx[k] as number;
      ny[kept] = ny[k] as number;
      level[kept] = level[k] as number;
      factor[kept] = factor[k] as number;
      owner[kept++] = owner[k] as number;
    }
    count = kept;
    learn(x, y);
  };

  /** Overlap at a place by the lines, if it is less than `limit`. */
  const model = (x: number, y: number, limit: number): number => {
    let sum = 0;
    for (let k = 0; k < count && sum < limit; k++) {
      const lack = (level[k] as number) - (nx[k] as number) * x - (ny[k] as number) * y;
      if (lack > NONE) sum += lack * (factor[k] as number);
    }
    return sum;
  };

  /** Take a place as goal if it has less than `limit`: what is least now. */
  const consider = (px: number, py: number, limit: number): number => {
    const x = Math.max(room[0] as number, Math.min(room[2] as number, px));
    const y = Math.max(room[1] as number, Math.min(room[3] as number, py));
    const sum = model(x, y, limit);
    if (sum >= limit) return limit;
    goal[0] = x;
    goal[1] = y;
    return sum;
  };

  const aim = (x: number, y: number, sum: number): boolean => {
    const enough = sum * (1 - WORTH);
    let least = enough;
    for (let k = 0; k < count; k++) {
      const kx = nx[k] as number;
      const ky = ny[k] as number;
      const at = level[k] as number;
      const lack = at - kx * x - ky * y;
      least = consider(x + kx * lack, y + ky * lack, least);
      for (let l = 0; l < k; l++) {
        const lx = nx[l] as number;
        const ly = ny[l] as number;
        const det = kx * ly - ky * lx;
        if (det * det < 4e-4) continue;
        const to = level[l] as number;
        least = consider((at * ly - to * ky) / det, (kx * to - lx * at) / det, least);
      }
      // along the rim of the bed, where the piece lies at it
      if (Math.abs(kx) > 0.02 && (y === room[1] || y === room[3]))
        least = consider((at - ky * y) / kx, y, least);
      if (Math.abs(ky) > 0.02 && (x === room[0] || x === room[2]))
        least = consider(x, (at - kx * x) / ky, least);
    }
    return least < enough;
  };

  return {
    room,
    goal,
    better,
    learn,
    aim,
    start: (x, y) => {
      for (let k = 0; k < count; k++) truth[owner[k] as number] = 0;
      count = 0;
      better(x, y);
    },
  };
}
