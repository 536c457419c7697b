import type { Costs } from '../../machines/shop.js';
import type { Position } from './handling.js';
import { turnCost } from './turns.js';

/** How a part lies under a machine: the side up, and the direction of its flat that points to the operator, degrees. */
export type Bearing = Pick<Position, 'faceUp' | 'heading'>;

/** Some ways to lie, by bits, with the least seconds to come by all of them. */
export interface Tour {
  readonly lies: number;
  /** Turning over and turning round. */
  readonly seconds: number;
  /** Turning round alone, if turning over took no time. */
  readonly turning: number;
}

/** Every choice of some ways to lie, those that are come by soonest first; from one of them by its number, or with -1 from anywhere. */
export type TourBook = (from: number) => readonly Tour[];

/**
 * Shortest ways through every choice of lies by dynamic programming over sets (Held, Karp 1962; Bellman 1962). Seconds keep
 * the triangle's law, so that to come by further ones never takes less.
 */
export function tourBook(lies: readonly Bearing[], costs: Costs, scale: number): TourBook {
  const turn = (a: Bearing, b: Bearing) => scale * turnCost(a.heading, b.heading, costs);
  const flip = (a: Bearing, b: Bearing) => (a.faceUp === b.faceUp ? 0 : scale * costs.flip);
  const whole = pathsThrough(lies, (a, b) => turn(a, b) + flip(a, b));
  const turns = pathsThrough(lies, turn);
  const known = new Map<number, readonly Tour[]>();
  return (from) => {
    const before = known.get(from);
    if (before !== undefined) return before;
    const tours = Array.from({ length: 2 ** lies.length - 1 }, (_, i): Tour => {
      const bits = i + 1;
      return { lies: bits, seconds: whole(from, bits), turning: turns(from, bits) };
    }).toSorted((a, b) => a.seconds - b.seconds || a.lies - b.lies);
    known.set(from, tours);
    return tours;
  };
}

/** Length of the shortest way that comes by all of some places, from one or from anywhere. */
function pathsThrough<T>(
  places: readonly T[],
  away: (a: T, b: T) => number,
): (from: number, bits: number) => number {
  const n = places.length;
  const table = places.map((a) => places.map((b) => away(a, b)));
  /** By the set and the place it ends in. */
  const least = new Float64Array(2 ** n * n).fill(Infinity);
  for (let bits = 1; bits < 2 ** n; bits++)
    for (let end = 0; end < n; end++) {
      if ((bits & (1 << end)) === 0) continue;
      const rest = bits & ~(1 << end);
      let best = rest === 0 ? 0 : Infinity;
      for (let last = 0; last < n; last++)
        if ((rest & (1 << last)) !== 0)
          best = Math.min(best, (least[rest * n + last] as number) + (table[last]?.[end] as number));
      least[bits * n + end] = best;
    }
  return (from, bits) => {
    let best = Infinity;
    for (let end = 0; end < n; end++)
      best = Math.min(best, (least[bits * n + end] as number) + (table[from]?.[end] ?? 0));
    return best;
  };
}
