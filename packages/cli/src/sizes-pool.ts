import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AnyFamily } from '@tinwright/core';
import { type Made, sizeMaker } from './sizes/make-size.js';
import type { Row } from './sizes/row.js';
import type { WorkerStart } from './sizes-worker.js';

/** Makes batches of sizes, in this process or in several. */
export interface SizePool {
  /** Batches that are worked on at once. */
  readonly width: number;
  readonly make: (rows: readonly Row[]) => Promise<readonly Made[]>;
  readonly close: () => Promise<void>;
}

/** A pool of worker threads; this process alone for one. The worker stands beside this file, built as it is. */
export async function sizePool(
  start: WorkerStart,
  families: readonly AnyFamily[],
  jobs: number,
): Promise<SizePool> {
  const worker = fileURLToPath(new URL('./sizes-worker.js', import.meta.url));
  if (jobs === 1 || !existsSync(worker)) {
    const maker = sizeMaker(start.common, families);
    const make = async (rows: readonly Row[]) => {
      const made: Made[] = [];
      for (const row of rows) made.push(await maker(row));
      return made;
    };
    return { width: 1, make, close: async () => undefined };
  }
  const { Tinypool } = await import('tinypool');
  const pool = new Tinypool({
    filename: worker,
    minThreads: jobs,
    maxThreads: jobs,
    workerData: start,
    runtime: 'worker_threads',
  });
  return { width: jobs, make: (rows) => pool.run(rows), close: () => pool.destroy() };
}
