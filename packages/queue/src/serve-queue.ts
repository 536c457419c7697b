import type { Job, Worker } from 'bullmq';
import type { LinkOptions } from './link.js';
import { KEPT, laneName, parcelKey, QUEUE } from './names.js';
import { openOwnLink, othersKey } from './others-keys.js';
import { QueueError } from './queue-error.js';
import { type Key, sealOf } from './seal.js';
import { type Needs, openTask, type Task } from './task.js';

/** What a worker does with tasks. */
export interface ServeOptions extends LinkOptions {
  readonly key: Key;
  /** Tasks worked on at once. */
  readonly lanes: number;
  /** Why a task cannot be done here, with what would help; null when it can. */
  readonly refuses: (needs: Needs) => string | null;
  /** What came of a task, packed. */
  readonly work: (task: Task) => Promise<Uint8Array>;
}

/** A worker at a queue. */
export interface Serving {
  readonly shown: string;
  /** Done when it was closed; says why when it could not go on. @throws QueueError when Redis stayed away, or its names were taken */
  readonly ended: Promise<{ readonly refused: string | null; readonly tasks: number }>;
  /** What it works on is finished, nothing new is taken; where Redis does not answer, others get what it worked on. */
  readonly close: () => void;
}

// ms: a worker that died is noticed after about as long
const LOCK = 10_000;
const STALLED = 5000;
const DEATHS = 3; // workers that may die over a task before it is given up
const LATER = 500; // ms until a task that is not for this worker is offered to others

/**
 * Take tasks from the queue in a Redis until closed. One that is not for this worker goes back to the others, and the
 * worker ends: it would only take the next one too.
 * @throws QueueError when no Redis answers, or something else stands under the names of the queue
 */
export async function serveQueue(
  url: string,
  { key, lanes, refuses, work, ...options }: ServeOptions,
): Promise<Serving> {
  const link = await openOwnLink(url, options);
  const { DelayedError, UnrecoverableError, Worker } = await import('bullmq');
  let refused: string | null = null;
  let tasks = 0;
  let silent = false;
  let close: () => void = () => undefined;
  const closing = new Promise<void>((done) => {
    close = done;
  });

  const process = async (job: Job, token?: string) => {
    const id = String(job.id);
    const task = openTask(key, id, job.data);
    if (task === null)
      throw new UnrecoverableError('the task is not what a run with the key of this worker gave');
    const why = refuses(task.needs);
    if (why !== null) {
      refused = why;
      await job.updateProgress(`a worker refuses: ${why}`);
      await job.moveToDelayed(Date.now() + LATER, token);
      close();
      throw new DelayedError();
    }
    const bytes = await work(task);
    await link.client.set(
      parcelKey(id),
      Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length),
      'EX',
      KEPT,
    );
    tasks += 1;
    return sealOf(key, `parcel ${id}`, bytes);
  };
  const worker: Worker = new Worker(QUEUE, process, {
    connection: link.client,
    name: laneName(lanes),
    concurrency: lanes,
    lockDuration: LOCK,
    stalledInterval: STALLED,
    maxStalledCount: DEATHS,
  });
  const spoiled = new Promise<never>((_, failed) => {
    // that Redis is away the link tells
    worker.on('error', async () => {
      const others = link.client.status === 'ready' ? await othersKey(link.client).catch(() => null) : null;
      if (others !== null) failed(new QueueError(link.shown, others));
    });
  });
  const ended = Promise.race([link.lost, spoiled, closing])
    .then(async () => {
      silent = (await link.orSilent(worker.close().then(() => true))) === null;
      if (silent) options.tell(`Redis at ${link.shown} does not answer; what was worked on goes to others`);
      return { refused, tasks };
    })
    .finally(async () => {
      const end = silent || link.client.status !== 'ready' ? worker.disconnect() : worker.close(true);
      await link.orSilent(end.catch(() => undefined));
      await link.close();
    });
  return { shown: link.shown, ended, close };
}
