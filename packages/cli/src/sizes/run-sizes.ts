import { join } from 'node:path';
import type { Row } from '../table/row.js';
import { standsAsMade } from './contents.js';
import { type Journal, type JournalLine, type Known, lineOf, type Shard } from './journal.js';
import type { Made } from './make-size.js';
import { type RunMarks, rowHash } from './run-marks.js';
import type { SizePool } from './sizes-pool.js';

const AHEAD = 3; // batches a worker, so that none waits

/** What a run of sizes needs. */
export interface SizesRun {
  readonly out: string;
  readonly rows: AsyncIterable<Row>;
  readonly pool: SizePool;
  readonly known: Known;
  readonly journal: Journal;
  readonly marks: RunMarks;
  readonly shard: Shard | null;
  /** Asked between batches: true ends the run. */
  readonly stopped: () => boolean;
  /** After every batch, in the order of the table; `standing` are the sizes that are there now. */
  readonly onMade: (made: readonly Made[], kept: number, standing: readonly string[]) => void;
}

type Batch = {
  readonly rows: readonly Row[];
  /** Lines of rows that stand as they would be made; null for the others. */
  readonly kept: readonly (JournalLine | null)[];
  readonly made: Promise<readonly Made[] | null>;
};

/**
 * Make sizes in batches, several at once; what was made before and is the same is kept. Results are written down in the
 * order of the table, so that every number of workers gives the same bytes; memory holds a few batches.
 * @returns false when the run was stopped before its end
 */
export async function runSizes(run: SizesRun): Promise<boolean> {
  const waiting: Batch[] = [];
  let rows: Row[] = [];
  const start = async () => {
    const kept: (JournalLine | null)[] = [];
    for (const row of rows) kept.push(await keptLine(run, row));
    const due = rows.filter((_, i) => kept[i] === null);
    const made = due.length === 0 ? Promise.resolve([]) : run.pool.make(due);
    made.catch(() => undefined); // told when its turn comes
    waiting.push({ rows, kept, made });
    rows = [];
  };
  for await (const row of run.rows) {
    if (run.shard !== null && row.number % run.shard.count !== run.shard.index % run.shard.count) continue;
    if (run.stopped()) break;
    rows.push(row);
    if (rows.length === run.pool.batch) await start();
    if (waiting.length >= run.pool.width() * AHEAD) await settleFirst(run, waiting);
  }
  if (rows.length > 0 && !run.stopped()) await start();
  while (waiting.length > 0) await settleFirst(run, waiting);
  return !run.stopped();
}

async function settleFirst(run: SizesRun, waiting: Batch[]): Promise<void> {
  const batch = waiting.shift() as Batch;
  const made = await batch.made;
  if (made === null) return;
  const byNumber = new Map(made.map((m) => [m.number, m]));
  for (const [i, row] of batch.rows.entries()) {
    const fresh = byNumber.get(row.number);
    const line = fresh === undefined ? batch.kept[i] : lineOf(fresh, rowHash(run.marks, row));
    if (line) await run.journal.write(line);
  }
  const kept = batch.rows.length - made.length;
  const gone = new Set(made.filter((m) => m.status !== 'made').map((m) => m.number));
  run.onMade(
    made,
    kept,
    batch.rows.filter((r) => !gone.has(r.number)).map((r) => r.name),
  );
}

/** The line of a size that stands as it would be made. */
async function keptLine({ known, marks, out }: SizesRun, row: Row): Promise<JournalLine | null> {
  if (row.refused !== undefined) return null;
  const line = await known.get(row.name);
  if (line === undefined || line.hash !== rowHash(marks, row)) return null;
  return standsAsMade(join(out, row.name), line.contents) ? line : null;
}
