import { randomUUID } from 'node:crypto';
import type { Queue, QueueEvents } from 'bullmq';
import type { Link, LinkOptions } from './link.js';
import { KEPT, lanesOf, parcelKey, QUEUE } from './names.js';
import { openOwnLink, othersKey } from './others-keys.js';
import { type RowResult, unpack } from './parcel.js';
import { QueueError } from './queue-error.js';
import { isSealed, type Key } from './seal.js';
import { sealTask, type Task } from './task.js';

/** How tasks are given to a queue. */
export interface QueueOptions extends LinkOptions {
  readonly key: Key;
}

/** A queue that tasks are given to; the workers are elsewhere. */
export interface SizeQueue {
  /** Tasks that all workers take at once, as far as known; no less than two. */
  readonly lanes: () => number;
  /** What came of a task, an item a row; null when it was given up. @throws QueueError */
  readonly make: (task: Task) => Promise<readonly RowResult[] | null>;
  /** Nothing more is waited for: what is out, and what is still given, is given up. */
  readonly giveUp: () => void;
  readonly close: () => Promise<void>;
}

/** A task that is out. */
interface Waiting {
  readonly task: Task;
  readonly tries: number;
  readonly since: number;
  readonly done: (items: readonly RowResult[] | null) => void;
  readonly failed: (error: Error) => void;
}

const TRIES = 3; // of a task whose worker died, or whose result was lost
const LOOK = 2000; // ms between looks at what is out
const LONELY = 3000; // ms without a worker before it is told

/**
 * Open the queue in a Redis. Tasks are BullMQ's to hand out, to try again and to take from workers that died; here is
 * kept what is out, so that a task which Redis forgot is given again, and results are held against their seals.
 * @throws QueueError when no Redis answers, or something else stands under the names of the queue
 */
export async function openQueue(url: string, { key, ...options }: QueueOptions): Promise<SizeQueue> {
  const link = await openOwnLink(url, options);
  const { Queue, QueueEvents } = await import('bullmq');
  const queue = new Queue(QUEUE, { connection: link.client });
  const events = new QueueEvents(QUEUE, { connection: link.client });
  queue.on('error', () => undefined); // the link tells
  events.on('error', () => undefined);
  await Promise.all([queue.waitUntilReady(), events.waitUntilReady()]);

  const run = randomUUID();
  const out = new Map<string, Waiting>();
  let count = 0;
  let givenUp = false;

  const give = async (waiting: Waiting) => {
    if (givenUp) return waiting.done(null);
    count += 1;
    const id = `${run}-${count}`;
    out.set(id, waiting);
    await queue.add('sizes', sealTask(key, id, waiting.task), {
      jobId: id,
      attempts: TRIES,
      backoff: { type: 'fixed', delay: 500 },
      removeOnComplete: { age: KEPT },
      removeOnFail: { age: KEPT },
    });
  };
  const fail = (id: string, why: string) => {
    out.get(id)?.failed(new QueueError(link.shown, why));
    out.delete(id);
  };
  const again = async (id: string, why: string) => {
    const waiting = out.get(id);
    if (waiting === undefined) return;
    if (waiting.tries >= TRIES) return fail(id, why);
    out.delete(id);
    await give({ ...waiting, tries: waiting.tries + 1, since: Date.now() });
  };
  const fetching = new Set<string>();
  const fetch = async (id: string, seal: unknown) => {
    if (!out.has(id) || fetching.has(id)) return;
    fetching.add(id);
    const bytes = await link.client
      .getBuffer(parcelKey(id))
      .catch(noParcel)
      .finally(() => fetching.delete(id));
    if (bytes === null) return again(id, 'the results of a task were lost three times');
    const items = isSealed(key, `parcel ${id}`, bytes, seal) ? unpack(bytes) : null;
    if (items === null) return again(id, 'what came back is not what a worker with this key sent');
    out.get(id)?.done(items);
    out.delete(id);
    await link.client.del(parcelKey(id));
    await queue.remove(id);
  };
  const safely = (work: Promise<unknown>) => void work.catch(() => undefined); // Redis is away: the next look sees it
  events.on('completed', ({ jobId, returnvalue }) => safely(fetch(jobId, returnvalue)));
  events.on('failed', ({ jobId, failedReason }) => fail(jobId, failure(failedReason)));
  events.on('progress', ({ jobId, data }) => {
    if (out.has(jobId) && typeof data === 'string') options.tell(data.replace(/\s+/g, ' '));
  });
  const crew = { lanes: 2, lonely: Date.now() as number | null };
  const lookFor = async (id: string) => {
    const job = await queue.getJob(id);
    if (job === undefined) await again(id, 'Redis forgot a task three times');
    else if (job.finishedOn !== undefined && job.failedReason === undefined) await fetch(id, job.returnvalue);
  };
  const look = async () => {
    if (link.client.status !== 'ready') return;
    const others = await othersKey(link.client);
    if (others !== null) for (const id of [...out.keys()]) fail(id, others);
    await lookAtCrew(queue, crew, link, out.size > 0 ? options.tell : () => undefined);
    for (const [id, { since }] of [...out]) if (Date.now() - since > LOOK) await lookFor(id);
  };
  const looking = setInterval(() => safely(look()), LOOK);
  safely(look());
  return {
    lanes: () => crew.lanes,
    make: (task) =>
      Promise.race([
        link.lost,
        new Promise<readonly RowResult[] | null>((done, failed) => {
          give({ task, tries: 1, since: Date.now(), done, failed }).catch((error: unknown) =>
            failed(notTaken(link.shown, error)),
          );
        }),
      ]),
    giveUp: () => {
      givenUp = true;
      for (const { done } of out.values()) done(null);
    },
    close: async () => {
      clearInterval(looking);
      if (link.client.status === 'ready')
        await link.orSilent(
          Promise.all([...out.keys()].map((id) => queue.remove(id).catch(() => undefined))),
        );
      await closed(queue, events, link);
    },
  };
}

/** Something else under the name of a parcel is as good as none. @throws when Redis is away: the next look sees it */
function noParcel(error: unknown): null {
  if (String(error).includes('WRONGTYPE')) return null;
  throw error;
}

/** What Redis says to a task that it does not take: somebody else uses the queue's names for something else. */
function notTaken(shown: string, error: unknown): Error {
  const [code] = String((error as Error).message).split(' ', 1);
  if (!/^[A-Z]{3,}$/.test(code ?? '')) return error as Error;
  return new QueueError(shown, `Redis does not take a task (${code}): it holds something else by that name`);
}

const failure = (reason: string) => `a task failed ${TRIES} times: ${reason}`;

/** Counts what workers take at once, and tells when none has been there for a while. */
async function lookAtCrew(
  queue: Queue,
  crew: { lanes: number; lonely: number | null },
  { shown }: Link,
  tell: (line: string) => void,
): Promise<void> {
  const workers = await queue.getWorkers();
  crew.lanes = Math.max(
    2,
    workers.reduce((n, w) => n + lanesOf(String(w.rawname ?? w.name)), 0),
  );
  if (workers.length > 0) crew.lonely = Date.now();
  else if (crew.lonely !== null && Date.now() - crew.lonely > LONELY) {
    tell(`no worker is at ${shown}; start one here or elsewhere: tinwright worker --queue ${shown}`);
    crew.lonely = null; // once, until one was there
  }
}

async function closed(queue: Queue, events: QueueEvents, link: Link): Promise<void> {
  const away = link.client.status !== 'ready';
  await link.orSilent((away ? events.disconnect() : events.close()).catch(() => undefined));
  if (!away) await link.orSilent(queue.close().catch(() => undefined));
  await link.close();
}
