import type { Costs } from '../../machines/shop.js';

/** Seconds to turn a part of usual size between two directions of its flat, degrees. A turn in two halves never takes less. */
export function turnCost(from: number, to: number, costs: Costs): number {
  const away = Math.abs(from - to);
  const turn = Math.min(away, 360 - away);
  if (turn < 0.5) return 0;
  return turn <= 90.5 ? costs.turn90 : Math.min(costs.turn180, 2 * costs.turn90);
}
