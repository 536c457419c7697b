import { expect, test } from 'vitest';
import { withProgress } from '../../src/host/with-progress.js';

/** What a bar was told. */
function watching() {
  const told: unknown[] = [];
  const progress = async (what: string, total: number) => {
    told.push([what, total]);
    return { to: (done: number) => told.push(done), end: () => told.push('end') };
  };
  return { told, host: { progress } };
}

test('work on many things is told one by one, and ended', async () => {
  const { told, host } = watching();
  const done = await withProgress(host, 'bend orders', 21, (onProgress) => {
    onProgress(7);
    onProgress(21);
    return 'plan';
  });
  expect(done).toBe('plan');
  expect(told).toEqual([['bend orders', 21], 7, 21, 'end']);
});

test('also where it fails', async () => {
  const { told, host } = watching();
  const failed = withProgress(host, 'pages', 400, () => Promise.reject(new Error('paper')));
  await expect(failed).rejects.toThrow('paper');
  expect(told).toEqual([['pages', 400], 'end']);
});
