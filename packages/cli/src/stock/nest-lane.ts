import { parentPort, workerData } from 'node:worker_threads';
import type { NestLayout } from '@tinwright/cutting/internal';
import { benchOf, type NestProblem, searchNest } from '@tinwright/cutting/internal';

/** A search of one seed, as it is sent to a thread. */
export interface Lane {
  readonly problem: NestProblem;
  readonly seed: number;
  /** Moves, the same on every machine, or seconds. */
  readonly moves: number | null;
  readonly seconds: number | null;
  /** A cell that is not 0 once the search shall end with the best it has. */
  readonly stop: SharedArrayBuffer;
}

/** What a lane reports: beds in use of every better layout. */
export interface LaneNews {
  readonly seed: number;
  readonly beds: number;
}

/** Run a lane to its end. */
export function runLane(lane: Lane, news: (n: LaneNews) => void): NestLayout {
  const stop = new Int32Array(lane.stop);
  const start = performance.now();
  let done = 0;
  const spend = (moves: number): number => {
    done += moves;
    if (Atomics.load(stop, 0) !== 0) return 1;
    return lane.seconds === null
      ? done / (lane.moves ?? 1)
      : (performance.now() - start) / (1000 * lane.seconds);
  };
  const better = (layout: NestLayout) => news({ seed: lane.seed, beds: layout.beds.length });
  return searchNest(benchOf(lane.problem), { seed: lane.seed, spend, better });
}

if (parentPort !== null && (workerData as { nestLane?: Lane } | null)?.nestLane !== undefined) {
  const port = parentPort;
  const layout = runLane((workerData as { nestLane: Lane }).nestLane, (news) => port.postMessage({ news }));
  port.postMessage({ layout });
}
