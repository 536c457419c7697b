import type { Mounting, Station } from '../stations/station.js';
import { otherStations } from './other-stations.js';
import {
  type BendProblem,
  clean,
  type FoundMoves,
  type Move,
  type Node,
  pathTo,
  START,
  stepTo,
} from './states.js';

/**
 * The same part where only what is certain is in the way, and tools and stops cost nothing: no plan of the part takes less than the
 * cheapest one of this, which asks for no geometry (a relaxed problem as a bound: Pearl 1984).
 */
export function relaxed(problem: BendProblem): BendProblem {
  const easier = { ...otherStations(problem, certainOnly), contact: () => null };
  if (!problem.ways.flat().some((w) => (w.gauging?.edges.length ?? 0) > 0)) return easier;
  // where there are stops they cost nothing, nor do lines
  return {
    ...easier,
    ways: easier.ways.map((list) => list.map((w) => ({ ...w, gauging: null }))),
    gauges: { ...problem.gauges, at: () => null },
  };
}

function certainOnly(station: Station): Station {
  const known = new Map<string, Mounting>();
  return {
    ...station,
    rack: [],
    mount: (operation, held, done) => {
      const lost = station.prospect(operation, held, done) === null;
      const key = `${operation.index} ${held} ${lost}`;
      const mounting = known.get(key) ?? {
        operation,
        held,
        obstacle: lost ? { code: 'part', panel: -1 } : null,
        stretches: [],
        putIn: null,
        takeOff: null,
        swings: station.swings(operation, held),
      };
      known.set(key, mounting);
      return mounting;
    },
  };
}

/** Moves made one after the other in a part; null where one of them does not go. */
export function followed(problem: BendProblem, moves: readonly Move[]): FoundMoves | null {
  let node: Node = START;
  for (const { mounting, position } of moves) {
    const { operation, held } = mounting;
    const station = problem.stations.find((s) => s.id === position.tooling) as Station;
    const next = stepTo(problem, node, { operation, station, held });
    if (next === null || !clean(problem, next)) return null;
    node = next;
  }
  return { moves: pathTo(node), bound: 0, cost: node.cost, expanded: moves.length };
}
