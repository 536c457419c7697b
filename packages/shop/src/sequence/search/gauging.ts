import type { Costs } from '../../machines/shop.js';
import { both, isEmpty, keptBy, type Mask, NONE, union, within } from '../part/mask.js';
import { isThere } from '../part/rear-edge.js';
import type { Gauging } from '../stations/gauge.js';
import type { Way } from './ways.js';

/** Least seconds of setting stops for some steps, by bits of what is set already. */
export type GaugingDue = (on: bigint) => number;

/** A step that cannot do without one of some settings, none of them for its line, and the least that takes. */
export interface GaugingStep {
  readonly settings: bigint;
  /** How many there are. */
  readonly count: number;
  readonly seconds: number;
}

/**
 * What a step needs in a state by its ways; null for nothing. An edge that a stop touches is gone for good once what it lies
 * on is bent. A line is shared among the steps that a stroke does; a way that needs neither stop nor line counts what a
 * bound takes off it.
 */
export function gaugingStep(ways: readonly Way[], costs: Costs): (done: Mask) => GaugingStep | null {
  const spared = ways.filter((w) => w.gauging === null).map((w) => (w.seconds - w.bare) / stepsOf(w));
  const most = Math.min(...spared);
  if (ways.length === 0 || most === 0) return () => null;
  const own = ways.filter((w) => w.gauging !== null);
  if (own.length === 0) return () => ({ settings: 0n, count: 0, seconds: most });
  const line = Math.min(most, costs.line / Math.max(...own.map(stepsOf)));
  const gauge = Math.min(most, costs.gauge);
  const stops = own.map((w) => w.gauging as Gauging);
  const hangsOn = stops.flatMap((s) => s.edges).reduce((all, e) => union(all, union(e.bent, e.flat)), NONE);
  const need = (done: Mask): GaugingStep => {
    let settings = 0n;
    let byLine = false;
    for (const stop of stops) {
      let sure = false;
      for (const { bit, bent, flat } of stop.edges) {
        if (!isEmpty(both(flat, done))) continue;
        settings |= bit;
        sure ||= stop.sure && isEmpty(flat) && within(bent, done);
      }
      byLine ||= !sure;
    }
    const seconds = settings === 0n ? line : byLine ? Math.min(gauge, line) : gauge;
    return { settings, count: count(settings), seconds };
  };
  return keptBy(hangsOn, need, MOST_KEPT);
}

const stepsOf = ({ operation }: Way): number => operation.steps.length;

const MOST_KEPT = 64; // states of a step

/** Bits of what may be set after a way in a state, and the least seconds that takes; no body is asked. */
export function gaugedNext(
  { gauging }: Way,
  done: Mask,
  on: bigint,
  { gauge, line }: Costs,
): { readonly on: bigint; readonly seconds: number } {
  if (gauging === null) return { on, seconds: 0 };
  let settings = 0n;
  for (const edge of gauging.edges) {
    if (!isThere(edge, done)) continue;
    settings |= edge.bit;
    // the first that is there is it
    if (gauging.sure) break;
  }
  if (settings === 0n) return { on, seconds: line };
  const set = on === 0n || (on & settings) !== 0n ? 0 : gauge;
  if (gauging.sure) return { on: settings, seconds: set };
  // by its line it leaves the first setting to come free, which may take less
  const free = on === 0n && line < gauge;
  return { on: free ? 0n : on | settings, seconds: Math.min(set, line) };
}

/**
 * What bringing lines to their places takes on top of the strokes, whatever the order: steps of which no two have a setting
 * in common each set the stop anew, or go by their lines (a packing: what is disjoint adds up). Those with the fewest
 * settings come first.
 */
export function gaugingDue(steps: readonly GaugingStep[]): GaugingDue {
  if (steps.length === 0) return () => 0;
  const sorted = steps.toSorted((a, b) => a.count - b.count || b.seconds - a.seconds);
  const known = new Map<bigint, number>();
  return (on) => {
    const before = known.get(on);
    if (before !== undefined) return before;
    const made = packed(sorted, on);
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
    if (settings !== 0n) most = Math.max(most, seconds);
  }
  // the first setting costs nothing
  return on === 0n ? sum - most : sum;
}

function count(bits: bigint): number {
  let found = 0;
  for (let b = bits; b !== 0n; b &= b - 1n) found += 1;
  return found;
}
