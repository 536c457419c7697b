import { workerData } from 'node:worker_threads';
import type { Task } from '@tinwright/queue';
import { loadFamilies } from '../open/load-families.js';
import { sizePacker } from './pack-sizes.js';

/** Works out the sizes of a task on a thread of a worker. */
const [, modules] = workerData as readonly [unknown, readonly string[]];
const families = await loadFamilies(modules);
const packSizes: (task: Task) => Promise<Uint8Array> = sizePacker(
  typeof families === 'string' ? [] : families,
);

export default packSizes;
