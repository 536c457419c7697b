import { type Mask, stepsOf, without } from '../part/mask.js';
import type { LineStroke } from '../part/operations.js';
import type { Station } from '../stations/station.js';
import type { Bound } from './bound.js';
import type { ToolSet } from './fingers.js';
import type { Position } from './handling.js';
import type { Ahead } from './precedence.js';
import type { BendProblem } from './states.js';

/**
 * Seconds that a state cannot do without on top of its bound, whatever order the rest is done in: the walking and tool
 * changing that any one step left needs, and what follows from steps that have to come before each other; infinite
 * where a step can no longer be done at all.
 */
export function riseOf(
  problem: BendProblem,
  bound: Bound,
  precedence: (done: Mask) => Ahead | null,
): (done: Mask, at: Position | null) => number {
  const { work, costs } = problem;
  const ways = work.steps.map((s) => work.operations.filter((o) => o.steps.includes(s.index)));
  const leastChange = costs.tools + costs.tool;
  /** From a position to a station, for an operation that never lets wider tools in than told. */
  const toStation = (at: Position | null, station: Station, narrow: number): number => {
    const walk = at === null || at.station === station.name ? 0 : costs.walk;
    if (station.rack.length === 0) return walk;
    const on = at?.toolsOn === station.id ? at.tools : null;
    const change = widest(on, station.rack) > narrow + 1e-9 ? leastChange : 0;
    return walk + change;
  };
  const least = (o: LineStroke, done: Mask, at: Position | null): number => {
    if ((o.before.low & done.low) !== 0 || (o.before.high & done.high) !== 0) return Infinity;
    if (o.steps.length > 1 && ((o.mask.low & done.low) !== 0 || (o.mask.high & done.high) !== 0))
      return Infinity;
    let found = Infinity;
    for (const { station, held } of problem.ways[o.index] ?? []) {
      const prospect = station.prospect(o, held, done);
      if (prospect !== null) found = Math.min(found, toStation(at, station, prospect.narrow));
      if (found === 0) return 0;
    }
    return found;
  };
  return (done, at) => {
    let most = 0;
    for (const step of stepsOf(without(work.all, done))) {
      let found = Infinity;
      for (const o of ways[step] ?? []) {
        if (found > 0) found = Math.min(found, least(o, done, at));
      }
      most = Math.max(most, found);
      if (most === Infinity) return Infinity;
    }
    const ahead = precedence(done);
    if (ahead === null) return Infinity;
    return most + Math.max(0, bound(done, at, ahead) - bound(done, at));
  };
}

/** Width of the widest group of tools that stand side by side. */
function widest(set: ToolSet, rack: readonly number[]): number {
  return Math.max(...(set ?? [rack]).map((pieces) => pieces.reduce((a, b) => a + b, 0)));
}
