/** Sizes nearer than this are one. */
const SAME = 1e-6;

/** A rectangle that may be cut, with what one of it is worth. */
export interface Prized {
  readonly w: number;
  readonly h: number;
  readonly value: number;
}

/** 0 and all sums of sizes up to a length, ascending; each size as often as it fits. */
export function sums(sizes: readonly number[], length: number): readonly number[] {
  const least = Math.min(...sizes);
  const distinct = [...new Set(sizes)].filter((s) => s <= length + SAME).sort((a, b) => a - b);
  const found = new Map<number, number>([[0, 0]]);
  const queue = [0];
  for (let i = 0; i < queue.length; i++) {
    const from = queue[i] as number;
    if (from + least > length + SAME) continue;
    for (const s of distinct) {
      const to = from + s;
      const key = Math.round(to / SAME);
      if (to > length + SAME || found.has(key)) continue;
      found.set(key, to);
      queue.push(to);
    }
  }
  return [...found.values()].sort((a, b) => a - b);
}

/** Index of the last point not beyond a length; points ascend and start at 0. */
export function pointBelow(points: readonly number[], length: number): number {
  let [low, high] = [0, points.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((points[middle] as number) <= length + SAME) low = middle;
    else high = middle - 1;
  }
  return low;
}

/**
 * Enough places to cut at for a best plan of the whole length: sums of sizes, and of those only the ones another sum
 * complements.
 * Source: Herz 1972 (sums); Terno, Lindemann & Scheithauer 1987 (fewer), from memory.
 */
export function rasterPoints(sizes: readonly number[], length: number): readonly number[] {
  const all = sums(sizes, length);
  const kept = new Set(all.map((p) => pointBelow(all, length - p)));
  return all.filter((_, i) => kept.has(i));
}
