import type { Loop } from '@tinwright/core';
import { crossesItself, loopArea } from '@tinwright/core/internal';
import { shifted } from './shifted.js';
import { trimmed } from './trimmed.js';
import { untangled } from './untangled.js';

/**
 * A loop moved by a distance to the right of its travel, exactly: lines stay lines, arcs stay arcs, corners that open
 * are rounded. Out of a counter-clockwise outline for a distance above 0, into it below 0; mm.
 * None are left of a loop that the distance eats up; more than one of a loop that falls apart, or that closes round a
 * pocket.
 */
export function offsetLoop(loop: Loop, by: number): readonly Loop[] {
  if (by === 0) return [loop];
  const shifts = shifted(loop, by);
  const quick = trimmed(shifts, by);
  if (quick !== null && !crossesItself(quick) && loopArea(quick) * loopArea(loop) > 0) return [quick];
  return untangled(loop, shifts, by);
}
