import { createServer, type Socket } from 'node:net';
import { openQueue, QueueError, serveQueue } from '@tinwright/queue';
import { describe, expect, test } from 'vitest';

const told: string[] = [];
const options = { key: null, tell: (line: string) => void told.push(line) };

async function failure(url: string): Promise<QueueError> {
  const error = await openQueue(url, options).then(
    () => null,
    (e: unknown) => e,
  );
  expect(error).toBeInstanceOf(QueueError);
  return error as QueueError;
}

describe('an address that is none', () => {
  test.each([
    ['store:6379', '"store:6379" given; redis://host:6379 is an address'],
    ['http://store:6379', '"http://store:6379" given; redis://host:6379 is an address'],
    ['redis://', '"redis://" given; redis://host:6379 is an address'],
    ['redis://store/nine', 'the database of a Redis is a number, "/nine" given'],
    ['redis://store/-1', 'the database of a Redis is a number, "/-1" given'],
    ['redis://store/1?db=2', '"?db=2" given behind the address of a Redis, nothing allowed'],
    ['redis://store#1', '"#1" given behind the address of a Redis, nothing allowed'],
    ['redis ://user:secret@store', '"redis ://store" given'],
  ])('%s', async (url, says) => {
    const { place, message } = await failure(url);
    expect(place).toBe('--queue');
    expect(message).toContain(says);
  });
});

interface Serving {
  readonly port: number;
  readonly close: () => Promise<void>;
}

/** A server that is no Redis, on a port of its own: it gives each command the same answer, or closes. */
async function serving(answer: string | null): Promise<Serving> {
  const open = new Set<Socket>();
  const server = createServer((socket) => {
    open.add(socket.on('error', () => undefined));
    if (answer === null) socket.destroy();
    else socket.on('data', (sent) => socket.write(answer.repeat(String(sent).match(/^\*/gm)?.length ?? 1)));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as { port: number };
  const close = () =>
    new Promise<void>((done) => {
      for (const socket of open) socket.destroy();
      server.close(() => done());
    });
  return { port, close };
}

test('no Redis at the address: said at once, without the password', async () => {
  const { port, close } = await serving(null);
  await close();
  const { place, message } = await failure(`redis://:secret@127.0.0.1:${port}/2`);
  expect(place).toBe(`redis://127.0.0.1:${port}/2`);
  expect(message).toBe('no Redis answers here (ECONNREFUSED)');
  const worker = serveQueue(`redis://127.0.0.1:${port}`, {
    ...options,
    lanes: 1,
    refuses: () => null,
    work: async () => new Uint8Array(),
  });
  await expect(worker).rejects.toThrow('no Redis answers here (ECONNREFUSED)');
});

test.each([
  ['closes', null, 'no Redis answers here'],
  ['answers as something else does', 'HTTP/1.1 400 Bad Request\r\n\r\n', 'no Redis answers here'],
  ['wants a password', '-NOAUTH Authentication required.\r\n', 'wants another password'],
])('a server that %s is named, in one line', async (_, answer, says) => {
  const { port, close } = await serving(answer);
  const { message } = await failure(`redis://127.0.0.1:${port}`);
  await close();
  expect(message).toContain(says);
  expect(message).not.toContain('\n');
  expect(told).toEqual([]);
});
