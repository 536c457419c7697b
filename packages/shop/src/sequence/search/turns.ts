import type { Costs } from '../../machines/shop.js';

/** Seconds to turn a part of usual size between two directions of its flat, degrees. A turn in two halves never takes less. */
export function turnCost(from: number, to: number, costs: Costs): number {
  const away = Math.abs(from - to);
  const turn = Math.min(away, 360 - away);
  if (turn < 0.5) return 0;
  return turn <= 90.5 ? costs.turn90 : Math.min(costs.turn180, 2 * costs.turn90);
}

/** Least seconds of turning to come by all of some directions: the shortest tree that joins them (Prim, 1957). */
export function leastTurning(headings: readonly number[], costs: Costs): number {
  const [first, ...rest] = headings;
  if (first === undefined) return 0;
  const open = new Map(rest.map((h) => [h, turnCost(first, h, costs)]));
  let seconds = 0;
  while (open.size > 0) {
    const [next, away] = [...open].reduce((a, b) => (b[1] < a[1] ? b : a));
    seconds += away;
    open.delete(next);
    for (const [h, far] of open) open.set(h, Math.min(far, turnCost(next, h, costs)));
  }
  return seconds;
}
