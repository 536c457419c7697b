import { type FastenerRun, middleOf } from '../joining/layout.js';
import { distance, type Point } from '../plane/point.js';

const STEPS = 16; // looked at in a pitch, before the place is halved in on
const FINE = 1e-6; // mm

/**
 * A run cut back at its ends until both stand a pitch off fasteners that are there already; null when nothing of it does.
 * @param others in the frame of the run
 * @param pitch mm, above 0
 */
export function clearRun(run: FastenerRun, others: readonly Point[], pitch: number): FastenerRun | null {
  if (others.length === 0) return run;
  const clear = (s: number) => {
    const at = middleOf(run, s);
    return others.every((p) => distance(p, at) >= pitch - FINE);
  };
  const from = firstClear(clear, run.from, run.to, pitch);
  const to = firstClear(clear, run.to, run.from, pitch);
  if (from === null || to === null || from > to) return null;
  return from === run.from && to === run.to ? run : { ...run, from, to };
}

/** From `start` towards `end`, the first place that is clear. */
function firstClear(clear: (s: number) => boolean, start: number, end: number, pitch: number): number | null {
  if (clear(start)) return start;
  const step = Math.sign(end - start) * (pitch / STEPS);
  const count = Math.floor(Math.abs((end - start) * STEPS) / pitch);
  for (let i = 1; i <= count; i++) {
    let [near, far] = [start + (i - 1) * step, start + i * step];
    if (!clear(far)) continue;
    while (Math.abs(far - near) > FINE) {
      const middle = (near + far) / 2;
      if (clear(middle)) far = middle;
      else near = middle;
    }
    return far;
  }
  return null;
}
