import { compose3, type Pose } from '../draft/space.js';
import type { Formed } from './formed.js';

/** Panels and bends of a formed part, in the frame they stand in. */
export type Standing = Pick<Formed, 'thickness' | 'panels' | 'bends'>;

/** A formed part moved to where it stands. */
export function stand({ thickness, panels, bends }: Standing, pose: Pose): Standing {
  return {
    thickness,
    panels: panels.map((p) => ({ ...p, pose: compose3(pose, p.pose) })),
    bends: bends.map((b) => ({ ...b, frame: compose3(pose, b.frame) })),
  };
}
