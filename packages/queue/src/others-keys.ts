import type { Redis } from 'ioredis';
import { type Link, type LinkOptions, openLink } from './link.js';
import { QUEUE } from './names.js';
import { QueueError } from './queue-error.js';

/** What BullMQ keeps under each of the names that it gives to a queue, as Redis calls it. */
const KINDS: Readonly<Record<string, string>> = {
  wait: 'list',
  paused: 'list',
  active: 'list',
  delayed: 'zset',
  prioritized: 'zset',
  completed: 'zset',
  failed: 'zset',
  marker: 'zset',
  stalled: 'set',
  'stalled-check': 'string',
  meta: 'hash',
  events: 'stream',
  id: 'string',
};

/**
 * What else stands under a name of the queue, null where nothing does: tasks would wait there for ever, since what Redis
 * refuses to a worker is tried again without a word.
 */
export async function othersKey(client: Redis): Promise<string | null> {
  const names = Object.keys(KINDS);
  const kinds = await Promise.all(names.map((name) => client.type(keyOf(name))));
  const i = kinds.findIndex((kind, k) => kind !== 'none' && kind !== KINDS[names[k] as string]);
  if (i === -1) return null;
  const name = names[i] as string;
  const cure = 'Remove it, or name another database of this Redis';
  return `${keyOf(name)} is a ${kinds[i]} there, a ${KINDS[name]} wanted: something else took the name. ${cure}`;
}

const keyOf = (name: string) => `bull:${QUEUE}:${name}`;

/** Reach a Redis whose names are free for the queue. @throws QueueError */
export async function openOwnLink(url: string, options: LinkOptions): Promise<Link> {
  const link = await openLink(url, options);
  const others = await othersKey(link.client).catch(() => null); // who may not ask goes on
  if (others === null) return link;
  await link.close();
  throw new QueueError(link.shown, others);
}
