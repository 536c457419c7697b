import { closest } from './closest.js';
import type { Segment } from './loop.js';
import { meetings } from './meet.js';

/** Exact least distance between two segments, lines or arcs, mm; 0 where they meet. */
export function segmentDistance(a: Segment, b: Segment): number {
  return meetings(a, b).length > 0 ? 0 : closest(a, b).distance;
}
