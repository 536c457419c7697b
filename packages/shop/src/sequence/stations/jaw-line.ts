import type { Mask } from '../part/mask.js';
import type { Mounting, Obstacle, Prospect } from './station.js';

/** One line worked on by hand, one side held. */
export interface JawLine {
  /** What no order changes. */
  readonly limits: Obstacle | null;
  readonly mount: (done: Mask) => Mounting;
  readonly prospect: (done: Mask) => Prospect | null;
}
