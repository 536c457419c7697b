import type { Costs } from '../../machines/shop.js';
import type { Way } from './ways.js';

/** Least seconds of setting stops for some steps, by bits of what may be set already. */
export type GaugingDue = (on: bigint) => number;

/** A step that cannot do without one of some settings or its line, and the least that takes. */
export interface GaugingStep {
  readonly settings: bigint;
  readonly seconds: number;
}

/** What a step needs by its ways; null where it may cost nothing. */
export function gaugingStep(ways: readonly Way[], costs: Costs): GaugingStep | null {
  if (ways.length === 0 || ways.some((w) => w.settings === 0n)) return null;
  return {
    settings: ways.reduce((bits, w) => bits | w.settings, 0n),
    seconds: ways.some((w) => w.byLine) ? Math.min(costs.gauge, costs.line) : costs.gauge,
  };
}

/** Ways but those without a stop that take longer than another one with its stop set, the part lying the same way. */
export const unspared = (ways: readonly Way[], costs: Costs): readonly Way[] =>
  ways.filter((w) => !isSparedBy(w, ways, costs));

/** Those with the fewest settings first. */
export const inPackingOrder = (a: GaugingStep, b: GaugingStep): number =>
  count(a.settings) - count(b.settings) || b.seconds - a.seconds;

/**
 * What bringing lines to their places takes on top of the strokes, whatever the order: steps of which no two have a setting
 * in common each set the stop anew, or go by their lines (a packing: what is disjoint adds up).
 */
export function gaugingDue(steps: readonly GaugingStep[]): GaugingDue {
  if (steps.length === 0) return () => 0;
  const known = new Map<bigint, number>();
  return (on) => {
    const before = known.get(on);
    if (before !== undefined) return before;
    const made = packed(steps, on);
    known.set(on, made);
    return made;
  };
}

function packed(steps: readonly GaugingStep[], on: bigint): number {
  let [used, sum, most] = [on, 0, 0];
  for (const { settings, seconds } of steps) {
    if ((used & settings) !== 0n) continue;
    used |= settings;
    sum += seconds;
    most = Math.max(most, seconds);
  }
  // the first setting costs nothing
  return on === 0n ? sum - most : sum;
}

/** True for a way without a stop that takes as long as another with the stop set, the part lying the same way. */
const isSparedBy = (way: Way, ways: readonly Way[], { gauge, slide }: Costs): boolean =>
  way.settings === 0n &&
  ways.some(
    (w) =>
      w.settings !== 0n &&
      w.heading === way.heading &&
      w.faceUp === way.faceUp &&
      shared(w, slide) + gauge <= shared(way, slide),
  );

/** Seconds of a way with the way to it, for each of its steps. */
const shared = ({ seconds, operation }: Way, slide: number): number =>
  (seconds + slide) / operation.steps.length;

function count(bits: bigint): number {
  let found = 0;
  for (let b = bits; b !== 0n; b &= b - 1n) found += 1;
  return found;
}
