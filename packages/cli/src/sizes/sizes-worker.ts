import { workerData } from 'node:worker_threads';
import { loadFamilies } from '../open/load-families.js';
import type { Row } from '../table/row.js';
import { type Common, type Made, sizePlanner, writeSize } from './make-size.js';

/** What a worker is started with. */
export interface WorkerStart {
  readonly common: Common;
  readonly out: string;
  /** Modules of families, by their paths. */
  readonly modules: readonly string[];
}

const [, { common, out, modules }] = workerData as readonly [unknown, WorkerStart];
const families = await loadFamilies(modules);
const planSize = sizePlanner(common, typeof families === 'string' ? [] : families);

/** Makes some sizes in the order of their rows. */
export default async function makeSizes(rows: readonly Row[]): Promise<readonly Made[]> {
  const made: Made[] = [];
  for (const row of rows) made.push(await writeSize(out, await planSize(row)));
  return made;
}
