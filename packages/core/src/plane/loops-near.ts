import { contains } from './inside.js';
import { boxOf, type Loop, reach, segments } from './loop.js';
import { nearPairs } from './near-pairs.js';
import { segmentDistance } from './segment-distance.js';

const ROUND = 1e-9; // mm

/** True for loops nearer to each other than `least`, mm, or one within the other. */
export function loopsNear(a: Loop, b: Loop, least: number): boolean {
  const [own, others] = [segments(a), segments(b)];
  const boxes = (list: typeof own) => list.map((s) => boxOf(reach(s)));
  const close = nearPairs(boxes(own), least, boxes(others)).some(
    ([i, j]) =>
      segmentDistance(own[i] as (typeof own)[number], others[j] as (typeof own)[number]) < least - ROUND,
  );
  return close || isIn(a, b) || isIn(b, a);
}

const isIn = (loop: Loop, other: Loop): boolean => other[0] !== undefined && contains(loop, other[0].at);
