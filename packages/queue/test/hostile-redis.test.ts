// Others write to the Redis too: every run ends, and says what it met.
import { openQueue, type QueueOptions, serveQueue } from '@tinwright/queue';
import { type Job, Worker } from 'bullmq';
import { Redis } from 'ioredis';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { REDIS, startRedis } from '../../../tests/kit/redis.js';

const TASK = {
  needs: { program: 'tinwright 1', families: ['open-box'], modules: [] },
  common: {},
  rows: [{ number: 1 }],
};
const key = (name: string) => `bull:tinwright-sizes:${name}`;

describe.runIf(REDIS)('a Redis that others write to', () => {
  let server: Awaited<ReturnType<typeof startRedis>>;
  let other: Redis;
  beforeAll(async () => {
    server = await startRedis();
    other = new Redis(server.url);
  });
  afterAll(async () => {
    other.disconnect();
    await server.end();
  });
  beforeEach(() => other.flushall());

  const told: string[] = [];
  const options: QueueOptions = { key: null, tell: (line) => void told.push(line) };
  const serving = () =>
    serveQueue(server.url, { ...options, lanes: 1, refuses: () => null, work: async () => new Uint8Array() });

  /** What a task fails with, once `before` was done to the Redis of an open queue, by a worker of any kind. */
  async function failure(before: () => Promise<unknown>, work?: (job: Job) => Promise<unknown>) {
    const queue = await openQueue(server.url, options);
    await before();
    const worker = work && new Worker('tinwright-sizes', work, { connection: { url: server.url } });
    worker?.on('error', () => undefined);
    try {
      return await queue.make(TASK).then(
        () => 'done',
        (error: Error) => error.message,
      );
    } finally {
      await worker?.close(true);
      await queue.close();
    }
  }
  const nothing = async () => undefined;

  test.each(['active', 'wait', 'delayed', 'meta', 'events', 'stalled'])(
    'something else as %s: neither a run nor a worker starts, the key is named',
    async (name) => {
      await other.set(key(name), 'x');
      const says = `${key(name)} is a string there, a `;
      await expect(openQueue(server.url, options)).rejects.toThrow(says);
      await expect(serving()).rejects.toThrow(says);
    },
  );

  test('something else as active while a run waits: it ends, and says which key', async () => {
    const says = `${key('active')} is a string there, a list wanted: something else took the name`;
    expect(await failure(() => other.set(key('active'), 'x'))).toContain(says);
  });

  test('something else as active while a worker waits: it ends too', async () => {
    const worker = await serving();
    const ended = worker.ended.then(
      () => 'done',
      (error: Error) => error.message,
    );
    await other.set(key('active'), 'x');
    await other.zadd(key('marker'), 0, '0'); // wakes it
    expect(await ended).toContain(`${key('active')} is a string there`);
  });

  test('what Redis does not take is told with its code', async () => {
    const failed = await failure(() => other.set(key('wait'), 'x'));
    expect(failed).toBe('Redis does not take a task (WRONGTYPE): it holds something else by that name');
  });

  test('something else under the name of a parcel is as good as none: tried three times, then told', async () => {
    const ids: string[] = [];
    const failed = await failure(nothing, async (job) => {
      ids.push(String(job.id));
      await other.lpush(`tinwright:parcel:${job.id}`, 'x');
      return 'seal';
    });
    expect(failed).toBe('the results of a task were lost three times');
    expect(new Set(ids).size).toBe(3);
  });

  test('what a worker says of itself is one line', async () => {
    await failure(nothing, async (job) => {
      await job.updateProgress('one\r\n two\u2028three');
      await new Promise((done) => setTimeout(done, 200));
      return 'seal';
    });
    expect(told).toContain('one two three');
  });
});

test.runIf(REDIS)(
  'a database that a Redis does not have: neither a run nor a worker takes another one',
  async () => {
    const server = await startRedis();
    const options = { key: null, tell: () => undefined };
    const says = 'this Redis has no database of that number; most have 0 to 15';
    await expect(openQueue(`${server.url}/99`, options)).rejects.toThrow(says);
    const work = async () => new Uint8Array();
    const worker = serveQueue(`${server.url}/16`, { ...options, lanes: 1, refuses: () => null, work });
    await expect(worker).rejects.toThrow(says);
    await (await openQueue(`${server.url}/15`, options)).close();
    await server.end();
  },
);
