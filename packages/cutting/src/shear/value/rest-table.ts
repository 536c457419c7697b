import { pointBelow } from './points.js';
import type { ValueTable } from './unlimited.js';

/**
 * For a block of size (x, y) in the lower left corner of a sheet: the most that the room around it can be worth, with
 * any number of each item.
 * Source: Viswanathan & Bagchi 1993, the bound on what a block may still become.
 */
export function restTable(table: ValueTable): Float64Array {
  const { xs, ys } = table;
  const [n, m] = [xs.length, ys.length];
  const rest = new Float64Array(n * m);
  for (let i = n - 1; i >= 0; i--)
    for (let j = m - 1; j >= 0; j--) {
      const beside = growth(xs, i, (grown, room) => at(rest, m, grown, j) + at(table.best, m, room, j));
      const above = growth(ys, j, (grown, room) => at(rest, m, i, grown) + at(table.best, m, i, room));
      rest[i * m + j] = Math.max(beside, above);
    }
  return rest;
}

function at(values: Float64Array, m: number, i: number, j: number): number {
  return values[i * m + j] as number;
}

/** The best way to grow a side from point `from` to a larger one; `room` is the point that fits in between. */
function growth(
  points: readonly number[],
  from: number,
  worth: (grown: number, room: number) => number,
): number {
  let best = 0;
  for (let to = from + 1; to < points.length; to++) {
    const room = pointBelow(points, (points[to] as number) - (points[from] as number));
    best = Math.max(best, worth(to, room));
  }
  return best;
}
