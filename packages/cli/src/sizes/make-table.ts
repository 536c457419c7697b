import { join, resolve } from 'node:path';
import { type AnyFamily, PROGRAM } from '@tinwright/core';
import { safeText } from '@tinwright/core/internal';
import { type Host, many } from '../host/console.js';
import { EXIT, type ExitCode, WriteError, writing } from '../host/failure.js';
import type { Locate } from '../open/open-text.js';
import { readRows } from '../table/read-rows.js';
import { listedRows, readTable } from '../table/read-table.js';
import { MOST_ROWS, type Row, TableError } from '../table/row.js';
import { whyUnread } from '../text/file-bytes.js';
import { DISK } from '../write/disk.js';
import { locked, PATIENCE } from '../write/lock.js';
import { listsIn } from '../write/own-lists.js';
import { folderAt } from '../write/place-of.js';
import { told } from '../write/reason.js';
import { placesOf, settle } from '../write/settle.js';
import { replaceFile } from '../write/write-file.js';
import { type CutSums, cutSums, cutSumsText } from './cut-sums.js';
import { indexPicture, MOST_PICTURES } from './index-picture.js';
import { csvName, knownSizes, openJournal, type Shard } from './journal.js';
import { foldersIn, leftText } from './left-standing.js';
import type { Common, Made } from './make-size.js';
import { type RunMarks, type TableMark, tableMarker } from './run-marks.js';
import { runSizes } from './run-sizes.js';
import { markShard, unmarkShards } from './shard-list.js';
import { type SizePool, sizePool } from './sizes-pool.js';
import { type QueueAsk, queuePool } from './sizes-queue.js';

/** A table of sizes and how to make it. */
export interface TableAsk {
  readonly common: Common;
  readonly out: string;
  readonly families: readonly AnyFamily[];
  readonly modules: readonly string[];
  /** The table's file; null for the rows that the job itself lists. */
  readonly table: string | null;
  /** The file whose lines are named: the table, or the job that lists the rows. */
  readonly source: string;
  readonly listed: unknown;
  /** Where a value of those rows stands. */
  readonly locate: Locate;
  readonly marks: RunMarks;
  readonly strict: boolean;
  readonly jobs: number;
  /** Where sizes are handed out to workers; null for this machine alone. */
  readonly queue: QueueAsk | null;
  readonly shard: Shard | null;
}

const MOST_TOLD = 100;
const FEW = 24; // rows that are not worth starting workers for

/** Counts of a run, and what was refused. */
interface Tally {
  made: number;
  kept: number;
  refused: number;
  errors: number;
  unwritable: string | null;
  readonly shown: string[];
  /** Sizes of an earlier run that no row makes now. */
  left: number;
}

/** How a run came to its end. */
type RunEnd = 'whole' | 'cut short' | 'stopped';

/** Make every row of a table, and say what came of it. @throws TableError where the table cannot be read */
export async function makeTable(ask: TableAsk, host: Host, json: boolean): Promise<ExitCode> {
  const read = await readThrough(ask);
  const tally: Tally = { made: 0, kept: 0, refused: 0, errors: 0, unwritable: null, shown: [], left: 0 };
  let end = 'whole' as RunEnd;
  const failed = await writing(host, json, async () => {
    const mine = ask.shard === null ? read.rows : Math.ceil(read.rows / ask.shard.count);
    const pool = await poolFor(ask, mine, host);
    try {
      end = await inFolder(ask, { pool, mine, read }, host, tally);
    } finally {
      await pool.close();
    }
  });
  if (failed !== EXIT.done) return failed;
  const cut = ask.common.cutList === null ? null : await cutSums(join(ask.out, csvName(ask.shard)));
  tell(ask, { ...tally, cut }, end, host, json);
  if (end === 'stopped') host.end?.('SIGINT');
  if (tally.unwritable !== null || end === 'stopped') return EXIT.unwritable;
  return tally.refused + tally.errors > 0 ? EXIT.findings : EXIT.done;
}

const rowsOf = ({ table, listed, locate, common, families }: TableAsk): AsyncIterable<Row> =>
  readRows(table === null ? listedRows(listed, locate) : readTable(table), {
    data: common.data,
    families,
  });

/** Reads the whole table once before anything is made: what is wrong with it as a whole is told at once. */
async function readThrough(ask: TableAsk): Promise<TableMark> {
  const marker = tableMarker();
  try {
    for await (const row of rowsOf(ask)) {
      if (row.number > MOST_ROWS)
        throw new TableError(row, `more than ${MOST_ROWS} rows. Make them from several tables`);
      marker.add(row);
    }
  } catch (error) {
    if (error instanceof TableError) throw error;
    throw new TableError({ line: 1, column: 1 }, whyUnread(error, 'a table'));
  }
  const read = marker.mark();
  if (read.rows === 0) throw new TableError({ line: 1, column: 1 }, 'the table has no rows');
  return read;
}

async function poolFor(ask: TableAsk, mine: number, host: Host): Promise<SizePool> {
  const { common, out, modules, families, queue } = ask;
  if (queue !== null) return queuePool(queue, { common, out, families, modules, total: mine }, host);
  return sizePool({ common, out, modules }, families, mine < FEW ? 1 : ask.jobs);
}

interface Crew {
  readonly pool: SizePool;
  /** Rows that are this run's. */
  readonly mine: number;
  readonly read: TableMark;
}

async function inFolder(
  ask: TableAsk,
  { pool, mine, read }: Crew,
  host: Host,
  tally: Tally,
): Promise<RunEnd> {
  const { out } = ask;
  const name = csvName(ask.shard);
  return told(
    out,
    (why) => `cannot be written: ${why}. What was made before stands`,
    async () => {
      await takeFolder(out);
      return locked(DISK, { target: join(out, name), shown: out, patience: PATIENCE.short }, async () => {
        await unmarkShards(out, ask.shard);
        const known = await knownSizes(out, name);
        const list = { format: 1, program: PROGRAM.mark, files: [name, 'index.svg'] };
        await replaceFile(join(out, 'sizes.json'), `${JSON.stringify(list, null, 2)}\n`, 'force');
        const journal = await openJournal(out, name);
        const progress = await host.progress?.('sizes', mine);
        const signal = heard(host, pool.stop);
        try {
          const whole = await runSizes({
            out,
            rows: rowsOf(ask),
            pool,
            known,
            journal,
            marks: ask.marks,
            shard: ask.shard,
            stopped: () => signal.came() || tally.unwritable !== null || (ask.strict && tally.refused > 0),
            onMade: (made, kept, standing) => {
              count(tally, made, kept, ask, host);
              tally.shown.push(...standing.slice(0, MOST_PICTURES - tally.shown.length));
              progress?.to(tally.made + tally.kept + tally.refused);
            },
          });
          if (whole) await journal.finish();
          if (whole && ask.shard !== null) await markShard(out, ask.shard, { ...ask.marks, ...read });
          await replaceFile(join(out, 'index.svg'), await indexPicture(out, tally.shown), 'force');
          // the sizes of other shards stand in the same folder
          if (whole && ask.shard === null) tally.left = (await foldersIn(out)) - tally.made - tally.kept;
          if (whole) return 'whole';
          return signal.came() ? 'stopped' : 'cut short';
        } finally {
          progress?.end();
          signal.end();
          await journal.leave();
          await known.close();
        }
      });
    },
  );
}

/** A set that a run left aside as it was cut off comes back first. */
async function settleFolder(out: string): Promise<void> {
  const places = placesOf(out, resolve(out));
  if ((await DISK.look(places.old)) === null) return;
  const at = { target: places.target, shown: out, patience: PATIENCE.short };
  await locked(DISK, at, () => settle(DISK, places));
}

/** A folder that is new, empty or of an earlier run. @throws WriteError for any other */
async function takeFolder(out: string): Promise<void> {
  await settleFolder(out);
  if ((await folderAt(DISK, out)) === null) await DISK.makeFolder(out);
  const names = (await DISK.names(out)).filter((n) => !n.includes('.tinwright-lock-'));
  if (names.length > 0 && !(await listsIn(DISK, out)).has('sizes.json'))
    throw new WriteError(
      out,
      'holds files that are not sizes from tinwright. Choose another folder with --out',
    );
}

/** Ctrl-C ends the run after the sizes that are being made here; pressed again, at once. */
function heard(host: Host, stop: () => void): { readonly came: () => boolean; readonly end: () => void } {
  let came = false;
  let waiting: NodeJS.Timeout | undefined;
  const hear = () => {
    if (came) process.exit(130);
    came = true;
    stop();
    waiting = setTimeout(() => host.err(`sizes: ${STOPPING}\n`), SOON);
  };
  for (const s of ['SIGINT', 'SIGTERM'] as const) process.on(s, hear);
  return {
    came: () => came,
    end: () => {
      clearTimeout(waiting);
      for (const s of ['SIGINT', 'SIGTERM'] as const) process.off(s, hear);
    },
  };
}

const SOON = 1000; // ms before anybody wonders
const STOPPING = 'stops when what is being made is done; once more ends it at once.';

function count(tally: Tally, made: readonly Made[], kept: number, ask: TableAsk, host: Host): void {
  tally.kept += kept;
  for (const m of made) {
    if (m.status === 'made') tally.made += 1;
    else if (m.status === 'refused') tally.refused += 1;
    else tally.unwritable ??= m.message;
    tally.errors += m.errors;
    if (tally.refused > MOST_TOLD) continue;
    for (const p of m.problems)
      host.err(`${safeText(ask.source)}:${p.line}:${p.column}: ${m.name}: ${p.text}.\n`);
  }
}

interface Told extends Tally {
  readonly cut: CutSums | null;
}

function tell({ out }: TableAsk, tally: Told, end: RunEnd, host: Host, json: boolean): void {
  const { made, kept, refused, errors, unwritable, cut, left } = tally;
  if (left > 0) host.err(leftText(out, left));
  if (json) {
    host.out(
      `${JSON.stringify({ out, made, kept, refused, errors, complete: end === 'whole', ...(cut !== null && { cut }) }, null, 2)}\n`,
    );
    return;
  }
  if (unwritable !== null) host.err(`${unwritable}.\n`);
  const counts = [`${made} made`, `${kept} kept`, `${refused} refused`].join(', ');
  const state = end === 'whole' ? '' : ' Stopped before the end; run it again to go on.';
  const wrong = errors === 0 ? '' : ` ${many(errors, 'finding')} of them an error: see sizes.csv.`;
  host.out(`${many(made + kept + refused, 'size')} in ${out}: ${counts}.${wrong}${state}\n`);
  if (cut !== null) host.out(`${cutSumsText(cut)}\n`);
}
