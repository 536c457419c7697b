import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AnyFamily } from '@tinwright/core';
import type { Task } from '@tinwright/queue';
import { type Host, many } from '../host/console.js';
import { EXIT, type ExitCode, refuse } from '../host/failure.js';
import { keyIn, loadQueue } from './load-queue.js';
import { modulesHashed, refusalOf } from './needs-of.js';
import { sizePacker } from './pack-sizes.js';

/** A worker as it was asked for. */
export interface WorkAsk {
  readonly queue: string;
  readonly key?: string;
  readonly jobs: number | string;
  readonly modules: readonly string[];
  readonly families: readonly AnyFamily[];
}

/** Make sizes for runs elsewhere until a signal comes, or until a run needs what is not here. */
export async function work(ask: WorkAsk, host: Host): Promise<ExitCode> {
  const { queue, jobs, families, modules } = ask;
  const refused = (message: string) => refuse(host, false, 'usage', 'worker', message);
  if (typeof jobs === 'string') return refused(jobs);
  const key = await keyIn(ask.key);
  if (typeof key === 'string') return refused(key);
  const loaded = await loadQueue();
  if (typeof loaded === 'string') return refused(loaded);
  const here = await modulesHashed(modules);
  const lanes = await lanesFor(ask, jobs);
  let end: () => void = () => process.exit(130); // a second signal, or one before there is anything to finish
  const hear = () => end();
  for (const s of ['SIGINT', 'SIGTERM'] as const) process.on(s, hear);
  try {
    const serving = await loaded.serveQueue(queue, {
      ...key,
      lanes: jobs,
      refuses: (needs) => refusalOf(needs, families, here),
      work: lanes.work,
      tell: (line) => host.err(`worker: ${line}.\n`),
    });
    const atOnce = end;
    end = () => {
      end = atOnce;
      serving.close();
    };
    host.out(`Working for ${serving.shown}, ${many(jobs, 'task')} at once; Ctrl-C ends it.\n`);
    const { refused: why, tasks } = await serving.ended;
    host.out(`${many(tasks, 'task')} done.\n`);
    return why === null ? EXIT.done : refused(`refuses a run: ${why}`);
  } catch (error) {
    if (!(error instanceof loaded.QueueError)) throw error;
    return refuse(host, false, 'queue', error.place, error.message, EXIT.unwritable);
  } finally {
    for (const s of ['SIGINT', 'SIGTERM'] as const) process.off(s, hear);
    await lanes.close();
  }
}

interface Lanes {
  readonly work: (task: Task) => Promise<Uint8Array>;
  readonly close: () => Promise<void>;
}

/** Threads, as many as tasks at once; this process alone for one. The thread's file stands beside this one, built. */
async function lanesFor({ families, modules }: WorkAsk, jobs: number): Promise<Lanes> {
  const filename = fileURLToPath(new URL('./queue-lane.js', import.meta.url));
  if (jobs === 1 || !existsSync(filename))
    return { work: sizePacker(families), close: async () => undefined };
  const { Tinypool } = await import('tinypool');
  const threads = { minThreads: jobs, maxThreads: jobs, runtime: 'worker_threads' } as const;
  const pool = new Tinypool({ filename, workerData: modules, ...threads });
  return { work: (task) => pool.run(task), close: () => pool.destroy() };
}
