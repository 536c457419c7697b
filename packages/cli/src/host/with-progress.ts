import type { Host } from './console.js';

/** So many are done before anybody asks how far it is. */
export const FEW = 20;

/** Work on so many things, told how many are done where there are more than a few. */
export async function withProgress<T>(
  host: Pick<Host, 'progress'>,
  what: string,
  total: number,
  work: (onProgress: (done: number) => void) => T | Promise<T>,
): Promise<T> {
  const bar = total <= FEW ? undefined : await host.progress?.(what, total);
  try {
    return await work((done) => bar?.to(done));
  } finally {
    bar?.end();
  }
}
