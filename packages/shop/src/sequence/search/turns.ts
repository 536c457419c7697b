import type { Costs } from '../../machines/shop.js';

/** How a part lies under a machine. */
export interface Bearing {
  readonly faceUp: 'marked' | 'unmarked';
  /** Direction on the flat pattern that points to the operator, degrees. */
  readonly heading: number;
}

const FULL = 360;
const EVEN = 0.5; // degrees that a part need not be turned

/** Degrees between two directions of a flat, 0 to 180. */
const between = (a: number, b: number): number => {
  const away = Math.abs(a - b) % FULL;
  return Math.min(away, FULL - away);
};

/** True for directions between which a part need not be turned, degrees. */
export const sameHeading = (a: number, b: number): boolean => between(a, b) < EVEN;

/** True when a part that is turned over comes nearer to a heading end for end than sidewise. */
export const endForEnd = (from: Bearing, to: Bearing): boolean => between(from.heading, to.heading) > 90.5;

/**
 * Seconds to bring a part of usual size from one way to lie to another. Turned over sidewise it keeps the same edge towards the
 * operator, end for end it brings the opposite one there, and takes no longer for it; so half a turn may be made by turning it
 * over twice. A detour over a third way to lie never takes less. Common practice, no source.
 */
export function turnCost(from: Bearing, to: Bearing, costs: Costs): number {
  const away = between(from.heading, to.heading);
  const [sidewise, endwise] = [roundCost(away, costs), roundCost(FULL / 2 - away, costs)];
  if (from.faceUp === to.faceUp) return Math.min(sidewise, 2 * costs.flip + endwise);
  return costs.flip + Math.min(sidewise, endwise);
}

/** Seconds to turn it on the bench without turning it over. A turn in two halves never takes less. */
function roundCost(degrees: number, { turn90, turn180 }: Costs): number {
  if (degrees < EVEN) return 0;
  return degrees <= 90.5 ? Math.min(turn90, 2 * turn180) : Math.min(turn180, 2 * turn90);
}
