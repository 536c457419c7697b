import type { Costs } from '../../machines/shop.js';
import { type Bearing, turnCost } from './turns.js';

/** Some ways to lie, by bits, with the least seconds to come by all of them. */
export interface Tour {
  readonly lies: number;
  /** Turning over and turning round. */
  readonly seconds: number;
}

/**
 * Every choice of some ways to lie through which the part is turned over so often or oftener, those that are come by soonest
 * first; from one of them by its number, or with -1 from anywhere.
 */
export type TourBook = (from: number, flips: number) => readonly Tour[];

/** Shortest tours through ways to lie, each list made once. */
export function tourBook(lies: readonly Bearing[], costs: Costs, scale: number): TourBook {
  const walks = walksThrough(lies, (a, b) => scale * turnCost(a, b, costs));
  const known = new Map<string, readonly Tour[]>();
  return (from, flips) => {
    const key = `${from} ${flips}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const tours = Array.from({ length: 2 ** lies.length - 1 }, (_, i): Tour => {
      const bits = i + 1;
      return { lies: bits, seconds: walks(from, bits, flips) };
    })
      .filter((t) => t.seconds < Infinity)
      .toSorted((a, b) => a.seconds - b.seconds || a.lies - b.lies);
    known.set(key, tours);
    return tours;
  };
}

/**
 * Length of the shortest walk that comes by all of some ways to lie, from one or from anywhere, by dynamic programming over
 * sets (Held, Karp 1962; Bellman 1962), once more for every time the part has to be turned over. Seconds keep the
 * triangle's law: to come by further ones never takes less, and one is come by again only to be turned over.
 */
function walksThrough(
  lies: readonly Bearing[],
  away: (a: Bearing, b: Bearing) => number,
): (from: number, bits: number, flips: number) => number {
  const n = lies.length;
  const table = lies.map((a) => lies.map((b) => away(a, b)));
  const over = lies.map((a) => lies.map((b) => a.faceUp !== b.faceUp));
  /** By times turned over, by the set and the lie it ends in. */
  const layers: Float64Array[] = [];
  const layer = (flips: number): Float64Array => {
    const before = layers[flips];
    if (before !== undefined) return before;
    const made = layerAfter(flips === 0 ? null : layer(flips - 1), table, over);
    layers[flips] = made;
    return made;
  };
  return (from, bits, flips) => {
    let best = Infinity;
    for (let end = 0; end < n; end++) {
      const left = Math.max(0, flips - (over[from]?.[end] === true ? 1 : 0));
      best = Math.min(best, (layer(left)[bits * n + end] as number) + (table[from]?.[end] ?? 0));
    }
    return best;
  };
}

/** Walks that turn the part over once more; without fewer the first ones, that need not turn it over. */
function layerAfter(
  fewer: Float64Array | null,
  table: readonly (readonly number[])[],
  over: readonly (readonly boolean[])[],
): Float64Array {
  const n = table.length;
  const least = new Float64Array(2 ** n * n).fill(Infinity);
  const through = (bits: number, last: number, end: number): number => {
    const rest = bits & ~(1 << end);
    if ((rest & (1 << last)) === 0) return Infinity;
    const come =
      fewer !== null && over[last]?.[end] === true
        ? Math.min(fewer[rest * n + last] as number, fewer[bits * n + last] as number)
        : (least[rest * n + last] as number);
    return come + (table[last]?.[end] as number);
  };
  for (let bits = 1; bits < 2 ** n; bits++)
    for (let end = 0; end < n; end++) {
      if ((bits & (1 << end)) === 0) continue;
      let best = bits === 1 << end && fewer === null ? 0 : Infinity;
      for (let last = 0; last < n; last++) best = Math.min(best, through(bits, last, end));
      least[bits * n + end] = best;
    }
  return least;
}
