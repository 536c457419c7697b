import { Worker } from 'node:worker_threads';
import type { NestLayout } from '@tinwright/cutting/internal';
import { type Lane, type LaneNews, runLane } from './nest-lane.js';

/**
 * Run lanes on at most so many threads at a time. What each finds depends on its seed and moves alone, so the number of
 * threads changes nothing but the time.
 */
export async function runLanes(
  lanes: readonly Lane[],
  threads: number,
  news: (n: LaneNews) => void,
): Promise<readonly NestLayout[]> {
  const found: NestLayout[] = new Array(lanes.length);
  let next = 0;
  const work = async (): Promise<void> => {
    for (let i = next++; i < lanes.length; i = next++) found[i] = await onThread(lanes[i] as Lane, news);
  };
  await Promise.all(Array.from({ length: Math.min(threads, lanes.length) }, work));
  return found;
}

/** From sources that no thread can load, the lane runs here. */
const BUILT = import.meta.url.endsWith('.js');

function onThread(lane: Lane, news: (n: LaneNews) => void): Promise<NestLayout> | NestLayout {
  if (!BUILT) return runLane(lane, news);
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./nest-lane.js', import.meta.url), { workerData: { nestLane: lane } });
    worker.on('message', (message: { news?: LaneNews; layout?: NestLayout }) => {
      if (message.news !== undefined) news(message.news);
      if (message.layout !== undefined) resolve(message.layout);
    });
    worker.on('error', reject);
    worker.on('exit', (code) => reject(new Error(`a nest's thread ended with ${code}`)));
  });
}
