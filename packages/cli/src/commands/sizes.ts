import { availableParallelism } from 'node:os';
import type { AnyFamily } from '@tinwright/core';
import { quoted } from '@tinwright/core/internal';
import type { Host } from '../host/console.js';
import { type ExitCode, refuse } from '../host/failure.js';
import {
  type AnyCommand,
  command,
  DXF_OPTION,
  JSON_OPTION,
  RACK_OPTION,
  SHOP_OPTION,
} from '../line/command.js';
import { KEY_OPTION, QUEUE_OPTION, readJobs } from '../line/queue-options.js';
import { shopAsked } from '../open/open-shop.js';
import { STANDARD_INPUT, withText } from '../open/open-text.js';
import type { Shard } from '../sizes/journal.js';
import { keyIn, loadQueue } from '../sizes/load-queue.js';
import type { Common } from '../sizes/make-size.js';
import { runMarks } from '../sizes/run-marks.js';
import type { QueueAsk } from '../sizes/sizes-queue.js';
import { TableError } from '../table/row.js';

interface Options {
  /** The job, or `merge` and folders. */
  readonly job: readonly string[];
  readonly table?: string;
  readonly out: string;
  readonly jobs?: string;
  readonly queue?: string;
  readonly key?: string;
  readonly shard?: string;
  readonly dxf: 'r2000' | 'r12';
  readonly pictures: boolean;
  readonly strict: boolean;
  readonly shop?: string;
  readonly rack?: string;
  readonly 'cut-list': boolean;
  readonly with?: readonly string[];
  readonly json: boolean;
}

const MERGE = 'merge';

export const sizes: AnyCommand = command<Options>({
  verb: 'sizes',
  argument: {
    name: 'job',
    describe:
      'job file whose values the rows write over; or merge and folders, to join what shards made there',
    needed: true,
    several: true,
  },
  summary: 'make a job in many sizes, one for each row of a table',
  options: {
    table: {
      type: 'string',
      describe:
        'CSV, TSV, JSON lines or YAML; columns such as name, body.length, stock.thickness. Without: sizes: of the job',
    },
    out: { type: 'string', default: 'sizes', describe: 'folder to write, a folder a size in it' },
    jobs: { type: 'string', describe: 'sizes made at once; as many as processors when left out' },
    queue: QUEUE_OPTION,
    key: KEY_OPTION,
    shard: {
      type: 'string',
      describe: 'only some rows: 3/16 is the third of sixteen runs; merge joins them',
    },
    dxf: DXF_OPTION,
    pictures: { type: 'boolean', default: false, describe: 'also pictures and 3D models' },
    strict: { type: 'boolean', default: false, describe: 'stop at the first row that cannot be made' },
    shop: SHOP_OPTION,
    'cut-list': {
      type: 'boolean',
      default: false,
      describe: 'a cut list for every size, and what all of them take',
    },
    rack: RACK_OPTION,
    json: JSON_OPTION,
  },
  examples: [
    [
      '$0 sizes tray.yaml --table sizes.csv --out trays',
      'a folder a row; run again, it makes only what changed',
    ],
    ['$0 sizes merge trays', 'one list of what its shards made'],
  ],
  run,
});

async function run(options: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  const { out, json } = options;
  const [job = '', ...folders] = options.job;
  if (job === MERGE) {
    const { mergeSizes } = await import('../sizes/merge-sizes.js');
    return mergeSizes(folders.length > 0 ? folders : [out], host, json);
  }
  const [extra] = folders;
  if (extra !== undefined)
    return refuse(host, json, 'usage', 'sizes', `${quoted(extra)} is one argument too many`);
  const asked = await askedOf(options);
  if (typeof asked === 'string') return refuse(host, json, 'usage', 'sizes', asked);
  const shop = await shopAsked(host, options.shop, json);
  if ('exit' in shop) return shop.exit;
  const opened = await withText(host, job, 'job', json, (data, _, locate) => ({ data, locate }));
  if ('exit' in opened) return opened.exit;
  const { data: read, locate } = opened.answer;
  const { sizes: own, ...data } = (read ?? {}) as Record<string, unknown>;
  if (options.table === undefined && own === undefined)
    return refuse(host, json, 'usage', 'sizes', 'give --table FILE, or sizes: in the job');
  const cut = await cutListOf(options, host);
  if (cut !== null && 'exit' in cut) return cut.exit;
  const { dxf, pictures } = options;
  const common: Common = { data, dxf, pictures, shop: shop.shop, cutList: cut };
  const { makeTable } = await import('../sizes/make-table.js');
  try {
    return await makeTable(
      {
        common,
        out,
        families,
        modules: options.with ?? [],
        table: options.table ?? null,
        source: options.table ?? job,
        listed: own,
        locate: (path) => locate(['sizes', ...path]),
        marks: await runMarks(common, options.with ?? []),
        strict: options.strict,
        ...asked,
      },
      host,
      json,
    );
  } catch (error) {
    if (!(error instanceof TableError)) throw error;
    const { line, column } = error.place;
    return refuse(host, json, 'table', `${options.table ?? job}:${line}:${column}`, error.message);
  }
}

/** Whether cut lists are wanted, and from which rack; the file is read here, so that its faults are told once. */
async function cutListOf(
  { rack, 'cut-list': wanted, json }: Options,
  host: Host,
): Promise<Common['cutList'] | { readonly exit: ExitCode }> {
  if (rack === undefined) return wanted ? { rack: null } : null;
  const { readRack } = await import('@tinwright/cutting');
  const opened = await withText(host, rack, 'rack', json, (data) => {
    readRack(data);
    return data;
  });
  return 'exit' in opened ? opened : { rack: opened.answer };
}

interface Asked {
  readonly jobs: number;
  readonly queue: QueueAsk | null;
  readonly shard: Shard | null;
}

async function askedOf({ jobs, shard, job, queue, key }: Options): Promise<Asked | string> {
  if (job[0] === STANDARD_INPUT) return 'a job file is wanted, it is read by every worker';
  const count = readJobs(jobs, availableParallelism());
  if (typeof count === 'string') return count;
  const handed = await queueAsked(queue, key);
  if (typeof handed === 'string') return handed;
  if (shard === undefined) return { jobs: count, ...handed, shard: null };
  const [, index, of] = /^(\d+)\/(\d+)$/.exec(shard) ?? [];
  const found = { index: Number(index), count: Number(of) };
  if (!(found.index >= 1 && found.index <= found.count && found.count <= 10_000))
    return `--shard: ${quoted(shard)} given; 3/16 is the third of sixteen`;
  return { jobs: count, ...handed, shard: found };
}

async function queueAsked(
  url: string | undefined,
  file: string | undefined,
): Promise<Pick<Asked, 'queue'> | string> {
  if (url === undefined) return file === undefined ? { queue: null } : '--key goes with --queue';
  const [loaded, key] = [await loadQueue(), await keyIn(file)];
  if (typeof loaded === 'string') return loaded;
  return typeof key === 'string' ? key : { queue: { url, ...key } };
}
