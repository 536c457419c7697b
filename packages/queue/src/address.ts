import { quoted } from '@tinwright/core/internal';
import { QueueError } from './queue-error.js';

/** Where a Redis is, as clients want it, and as it may be shown. */
export interface Address {
  readonly url: string;
  /** Without user and password. */
  readonly shown: string;
}

const SCHEMES = ['redis:', 'rediss:'];

/** Read `redis://[user:password@]host[:port][/database]`; `rediss:` for TLS. @throws QueueError */
export function addressOf(text: string): Address {
  const url = URL.canParse(text) ? new URL(text) : null;
  if (url === null || !SCHEMES.includes(url.protocol) || url.hostname === '')
    throw new QueueError('--queue', `${quoted(hidden(text))} given; redis://host:6379 is an address`);
  if (!/^(\/\d{0,3})?$/.test(url.pathname))
    throw new QueueError('--queue', `the database of a Redis is a number, ${quoted(url.pathname)} given`);
  const rest = url.search + url.hash;
  if (rest !== '')
    throw new QueueError('--queue', `${quoted(rest)} given behind the address of a Redis, nothing allowed`);
  return { url: url.href, shown: `${url.protocol}//${url.host}${url.pathname === '/' ? '' : url.pathname}` };
}

/** An address that could not be read, without what may be a password. */
const hidden = (text: string) => text.replace(/\/\/.*@/s, '//');
