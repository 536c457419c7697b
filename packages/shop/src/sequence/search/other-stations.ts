import type { Station } from '../stations/station.js';
import type { BendProblem } from './states.js';

/** The same part with every station made into another one. */
export function otherStations(problem: BendProblem, other: (station: Station) => Station): BendProblem {
  const stations = new Map(problem.stations.map((s) => [s, other(s)]));
  return {
    ...problem,
    stations: [...stations.values()],
    ways: problem.ways.map((list) =>
      list.map((way) => ({ ...way, station: stations.get(way.station) as Station })),
    ),
  };
}
