// A run and a worker end when they are asked to, whatever became of their Redis.
import { openQueue, type Serving, serveQueue } from '@tinwright/queue';
import { describe, expect, test } from 'vitest';
import { REDIS, startRedis } from '../../../tests/kit/redis.js';

const TASK = {
  needs: { program: 'tinwright 1', families: ['open-box'], modules: [] },
  common: {},
  rows: [{ number: 1 }],
};
const HANGS = 60_000; // ms

type Redis = Awaited<ReturnType<typeof startRedis>>;

/** What becomes of a Redis before the end is asked for. */
type Fate = readonly [string, (redis: Redis) => unknown];
const ANSWERS: Fate = ['answers', () => undefined];
const SILENT: readonly Fate[] = [
  ['is gone', (redis) => redis.end()],
  ['hangs', (redis) => redis.hang()],
];

describe.runIf(REDIS)('a Redis that', () => {
  describe.each([ANSWERS, ...SILENT])('%s', (_, befall) => {
    test(
      'lets a run end whose task nobody takes',
      async () => {
        const redis = await startRedis();
        const queue = await openQueue(redis.url, { key: null, tell: () => undefined });
        const made = queue.make(TASK);
        await befall(redis);
        queue.giveUp();
        expect(await made).toBeNull();
        expect(await queue.make(TASK)).toBeNull();
        await queue.close();
        await redis.end();
      },
      HANGS,
    );

    test(
      'lets a worker end that waits',
      async () => {
        const redis = await startRedis();
        const worker = await served(redis, []);
        await befall(redis);
        worker.close();
        expect(await worker.ended).toEqual({ refused: null, tasks: 0 });
        await redis.end();
      },
      HANGS,
    );
  });

  describe.each(SILENT)('%s', (_, befall) => {
    test(
      'lets a worker end that has a task in hand, and says what becomes of that',
      async () => {
        const redis = await startRedis();
        const told: string[] = [];
        let begun: () => void = () => undefined;
        const working = new Promise<void>((done) => {
          begun = done;
        });
        const worker = await served(redis, told, () => {
          begun();
          return new Promise(() => undefined);
        });
        const queue = await openQueue(redis.url, { key: null, tell: () => undefined });
        const made = queue.make(TASK);
        await working;
        await befall(redis);
        worker.close();
        expect(await worker.ended).toEqual({ refused: null, tasks: 0 });
        expect(told).toEqual([`Redis at ${redis.url} does not answer; what was worked on goes to others`]);
        queue.giveUp();
        expect(await made).toBeNull();
        await queue.close();
        await redis.end();
      },
      HANGS,
    );
  });

  test(
    'answers lets a worker finish what it has in hand',
    async () => {
      const redis = await startRedis();
      const work = () => new Promise<Uint8Array>((done) => setTimeout(() => done(new Uint8Array()), 3000));
      const worker = await served(redis, [], () => {
        worker.close();
        return work();
      });
      const queue = await openQueue(redis.url, { key: null, tell: () => undefined });
      const made = queue.make(TASK).catch(() => undefined);
      expect(await worker.ended).toEqual({ refused: null, tasks: 1 });
      queue.giveUp();
      await made;
      await queue.close();
      await redis.end();
    },
    HANGS,
  );
});

async function served(
  redis: Redis,
  told: string[],
  work: () => Promise<Uint8Array> = async () => new Uint8Array(),
): Promise<Serving> {
  const options = { key: null, tell: (line: string) => void told.push(line), lanes: 1 };
  return serveQueue(redis.url, { ...options, refuses: () => null, work });
}
