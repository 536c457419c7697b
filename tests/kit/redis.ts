import { spawn, spawnSync } from 'node:child_process';
import { createServer } from 'node:net';

/** Whether a redis-server is installed; where none is, what needs one is shown as skipped, and CI installs it. */
export const REDIS = spawnSync('redis-server', ['--version']).error === undefined;

/** A port where nothing listens. */
export async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as { port: number };
  await new Promise((done) => server.close(done));
  return port;
}

/** A Redis of its own that keeps nothing, and what ends it. */
export async function startRedis(): Promise<{
  readonly url: string;
  /** It keeps its connections and answers nothing any more. */
  readonly hang: () => void;
  readonly end: () => Promise<void>;
}> {
  const port = await freePort();
  const options = ['--port', `${port}`, '--bind', '127.0.0.1', '--save', '', '--appendonly', 'no'];
  const child = spawn('redis-server', options, { stdio: ['ignore', 'pipe', 'ignore'] });
  await new Promise<void>((ready, failed) => {
    let said = '';
    child.stdout.on('data', (chunk) => {
      said += chunk;
      if (said.includes('Ready to accept connections')) ready();
    });
    child.on('exit', () => failed(new Error(`redis-server ended: ${said}`)));
  });
  const ended = new Promise<void>((done) => child.on('exit', () => done()));
  return {
    url: `redis://127.0.0.1:${port}`,
    hang: () => void child.kill('SIGSTOP'),
    end: async () => {
      child.kill('SIGKILL');
      await ended;
    },
  };
}
