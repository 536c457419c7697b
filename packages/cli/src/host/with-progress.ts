import type { Host } from './console.js';

/** Work on so many things, told how many are done. */
export async function withProgress<T>(
  host: Pick<Host, 'progress'>,
  what: string,
  total: number,
  work: (onProgress: (done: number) => void) => T | Promise<T>,
): Promise<T> {
  const bar = await host.progress?.(what, total);
  try {
    return await work((done) => bar?.to(done));
  } finally {
    bar?.end();
  }
}
