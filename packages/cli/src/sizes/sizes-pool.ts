import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AnyFamily } from '@tinwright/core';
import type { Row } from '../table/row.js';
import { type Made, sizePlanner, writeSize } from './make-size.js';
import type { WorkerStart } from './sizes-worker.js';

/** Makes batches of sizes: in this process, on threads of it, or on other machines. */
export interface SizePool {
  /** Batches that are worked on at once. */
  readonly width: () => number;
  /** Rows of a batch. */
  readonly batch: number;
  /** What came of rows; null when they were given up. */
  readonly make: (rows: readonly Row[]) => Promise<readonly Made[] | null>;
  /** The run is to end: what is waited for from elsewhere is given up, what is made here is finished. */
  readonly stop: () => void;
  readonly close: () => Promise<void>;
}

const BATCH = 8; // rows

/** A pool of worker threads; this process alone for one. The worker stands beside this file, built as it is. */
export async function sizePool(
  start: WorkerStart,
  families: readonly AnyFamily[],
  jobs: number,
): Promise<SizePool> {
  const worker = fileURLToPath(new URL('./sizes-worker.js', import.meta.url));
  if (jobs === 1 || !existsSync(worker)) {
    const planSize = sizePlanner(start.common, families);
    const make = async (rows: readonly Row[]) => {
      const made: Made[] = [];
      for (const row of rows) made.push(await writeSize(start.out, await planSize(row)));
      return made;
    };
    return { width: () => 1, batch: BATCH, make, stop: () => undefined, close: async () => undefined };
  }
  const { Tinypool } = await import('tinypool');
  const pool = new Tinypool({
    filename: worker,
    minThreads: jobs,
    maxThreads: jobs,
    workerData: start,
    runtime: 'worker_threads',
  });
  return {
    width: () => jobs,
    batch: BATCH,
    make: (rows) => pool.run(rows),
    stop: () => undefined,
    close: () => pool.destroy(),
  };
}
