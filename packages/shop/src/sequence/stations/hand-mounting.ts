import type { LineFrame } from '../part/line.js';
import type { LineStroke } from '../part/operations.js';
import type { Mounting, Obstacle } from './station.js';

/** A stroke by hand on what it is held by: nothing is mounted, put in or taken off. @param obstacle what keeps it, null for none */
export function handMounting(
  operation: LineStroke,
  { held, swings }: Pick<LineFrame, 'held' | 'swings'>,
  obstacle: Obstacle | null,
): Mounting {
  return { operation, held, obstacle, stretches: [], putIn: null, takeOff: null, swings };
}
