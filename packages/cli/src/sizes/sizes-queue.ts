import type { AnyFamily } from '@tinwright/core';
import type { Key, Needs, RowResult } from '@tinwright/queue';
import type { Host } from '../host/console.js';
import { WriteError } from '../host/failure.js';
import type { Row } from '../table/row.js';
import { loadQueue } from './load-queue.js';
import { type Common, type Made, writeSize } from './make-size.js';
import { needsOf } from './needs-of.js';
import type { SizePool } from './sizes-pool.js';

/** Where sizes are handed out. */
export interface QueueAsk {
  readonly url: string;
  readonly key: Key;
}

/** A run that hands its sizes out. */
export interface QueuedRun {
  readonly common: Common;
  readonly out: string;
  readonly families: readonly AnyFamily[];
  readonly modules: readonly string[];
  /** Rows there are. */
  readonly total: number;
}

const TASK = { least: 20, most: 100, parts: 50 } as const; // rows of a task, and tasks a run has at least if it can

/**
 * Workers at a queue as a pool: they work sizes out, and what they send is checked and written here, so that they need
 * no place on a disk and the folder is the same as from threads.
 * @throws WriteError when no Redis answers
 */
export async function queuePool(
  { url, key }: QueueAsk,
  { common, out, families, modules, total }: QueuedRun,
  host: Host,
): Promise<SizePool> {
  const loaded = await loadQueue();
  if (typeof loaded === 'string') throw new WriteError('--queue', loaded);
  const { openQueue, QueueError } = loaded;
  const orTold = async <T>(work: Promise<T>, then: string): Promise<T> => {
    try {
      return await work;
    } catch (error) {
      throw error instanceof QueueError ? new WriteError(error.place, `${error.message}${then}`) : error;
    }
  };
  const needs: Needs = await needsOf(common.data, families, modules);
  const tell = (line: string) => host.err(`sizes: ${line}.\n`);
  const queue = await orTold(openQueue(url, { key, tell }), '');
  const make = async (rows: readonly Row[]) => {
    const stands = '. What was made stands; run it again to go on';
    const items = await orTold(queue.make({ needs, common, rows }), stands);
    if (items === null) return null;
    if (items.length !== rows.length || !items.every((item, i) => isOf(item, rows[i] as Row)))
      throw new WriteError(url, `what came back are not the sizes that were asked for${stands}`);
    const made: Made[] = [];
    for (const { said, files } of items) made.push(await writeSize(out, { made: said as Made, files }));
    return made;
  };
  return {
    width: queue.lanes,
    batch: Math.min(TASK.most, Math.max(TASK.least, Math.round(total / TASK.parts))),
    make,
    stop: queue.giveUp,
    close: queue.close,
  };
}

const FILE = /\.(dxf|svg|json|glb|csv)$/;

/** True when an item says of exactly this row what a worker says, and brings only kinds of files that we write. */
function isOf({ said, files }: RowResult, row: Row): boolean {
  const made = said as Made | null;
  if (typeof made !== 'object' || made === null) return false;
  return (
    made.number === row.number &&
    made.name === row.name &&
    (made.status === 'refused' || (made.status === 'made' && row.refused === undefined)) &&
    [made.findings, made.errors, made.files].every(Number.isInteger) &&
    [made.message, made.blanks, made.mass, made.sheets, made.price].every((t) => typeof t === 'string') &&
    Array.isArray(made.problems) &&
    made.problems.every((p) => typeof p?.text === 'string' && Number.isInteger(p.line)) &&
    files.every((f) => FILE.test(f.path))
  );
}
