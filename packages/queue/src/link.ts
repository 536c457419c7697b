import { setTimeout as setTimer } from 'node:timers/promises';
import type { Redis } from 'ioredis';
import { addressOf } from './address.js';
import { QueueError } from './queue-error.js';

/** How a queue is reached, and what is done when it is not. */
export interface LinkOptions {
  /** Takes lines that a person should see: Redis is away, is back, no worker is there. */
  readonly tell: (line: string) => void;
  /** How long a Redis that went away is waited for, ms; ten minutes when left out. */
  readonly patience?: number;
}

/** A Redis that answered. */
export interface Link {
  readonly client: Redis;
  readonly shown: string;
  /** Fails when patience is at its end; never ends otherwise. */
  readonly lost: Promise<never>;
  /** What work comes to; null once Redis does not answer, when it might never come to anything. */
  readonly orSilent: <T>(work: Promise<T>) => Promise<T | null>;
  readonly close: () => Promise<void>;
}

const FIRST = 5000; // ms for the first answer
const SILENT = 2000; // ms away before it is told: a restart is often shorter
const PATIENCE = 600_000; // ms
const ANSWER = 1000; // ms for an answer when it is to end
const LONGEST_PAUSE = 1000; // ms between tries

/** Reach a Redis. @throws QueueError when it does not answer */
export async function openLink(url: string, { tell, patience = PATIENCE }: LinkOptions): Promise<Link> {
  const address = addressOf(url);
  const { Redis } = await import('ioredis');
  let opened = false;
  let why: unknown = null;
  const client = new Redis(address.url, {
    lazyConnect: true,
    maxRetriesPerRequest: null, // a command waits until Redis is back
    connectTimeout: FIRST,
    retryStrategy: (tries) => (opened ? Math.min(100 * tries, LONGEST_PAUSE) : null),
  });
  client.on('error', (error) => {
    why = error;
  });
  try {
    await within(
      FIRST,
      client.connect().then(() => client.ping()),
    );
    if (why !== null) throw why; // a database that is not there: the client would use the first one
  } catch (error) {
    client.disconnect();
    throw new QueueError(address.shown, unanswered(why ?? error));
  }
  opened = true;
  const watch = watched(client, address.shown, tell, patience);
  return {
    client,
    shown: address.shown,
    lost: watch.lost,
    orSilent: (work) => orSilent(client, work),
    close: async () => {
      watch.end();
      client.disconnect();
    },
  };
}

async function orSilent<T>(client: Redis, work: Promise<T>): Promise<T | null> {
  let done = false;
  const silence = async () => {
    while (!done && client.status === 'ready') {
      const answered = await within(ANSWER, client.ping()).catch(() => null);
      if (answered === null) break;
      await setTimer(ANSWER, undefined, { ref: false });
    }
    return null;
  };
  try {
    return await Promise.race([work, silence()]);
  } finally {
    done = true;
  }
}

/** Tells when a client loses its Redis and finds it again. */
function watched(client: Redis, shown: string, tell: LinkOptions['tell'], patience: number) {
  let [silent, over]: (NodeJS.Timeout | undefined)[] = [];
  let told = false;
  let fail: (error: QueueError) => void = () => undefined;
  const lost = new Promise<never>((_, failed) => {
    fail = failed;
  });
  lost.catch(() => undefined); // whoever waits for it hears of it
  const away = () => {
    if (over !== undefined) return;
    silent = setTimeout(
      () => {
        told = true;
        tell(`Redis at ${shown} does not answer any more; waiting for it`);
      },
      Math.min(SILENT, patience / 2),
    );
    over = setTimeout(
      () => fail(new QueueError(shown, `Redis went away and has not come back for ${spell(patience)}`)),
      patience,
    );
  };
  const back = () => {
    clearTimeout(silent);
    clearTimeout(over);
    over = undefined;
    if (told) tell(`Redis at ${shown} answers again`);
    told = false;
  };
  client.on('close', away);
  client.on('ready', back);
  return {
    lost,
    end: () => {
      client.off('close', away);
      clearTimeout(silent);
      clearTimeout(over);
    },
  };
}

const spell = (ms: number) =>
  ms >= 120_000 ? `${Math.round(ms / 60_000)} minutes` : `${Math.round(ms / 1000)} s`;

function unanswered(error: unknown): string {
  const { code, message = '' } = error as { code?: string; message?: string };
  if (/NOAUTH|WRONGPASS|NOPERM/.test(message))
    return 'Redis wants another password: redis://:PASSWORD@host:6379';
  if (/DB index/.test(message)) return 'this Redis has no database of that number; most have 0 to 15';
  return `no Redis answers here (${code ?? message.split('\n')[0]?.replace(/\.$/, '')})`;
}

async function within<T>(ms: number, work: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<never>((_, failed) => {
    const over = () => failed(new Error(`nothing within ${ms / 1000} s`));
    timer = setTimeout(() => setImmediate(over), ms); // after an answer that came while the process was busy
  });
  try {
    return await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}
