import { compose3, type Formed, HOME, type Pose } from '@tinwright/core';
import { bendSurface } from './bend-surface.js';
import { panelSurface } from './panel-surface.js';
import { join, type Surface } from './surface.js';
import type { View } from './view.js';

/** The whole surface of a formed part standing at `pose`. The view only decides where round faces show a contour. */
export function partSurface(formed: Formed, view: View, pose: Pose = HOME): Surface {
  const placed: Formed =
    pose === HOME
      ? formed
      : {
          ...formed,
          panels: formed.panels.map((p) => ({ ...p, pose: compose3(pose, p.pose) })),
          bends: formed.bends.map((b) => ({ ...b, frame: compose3(pose, b.frame) })),
        };
  return join([
    ...placed.panels.map((p) => panelSurface(placed, p)),
    ...placed.bends.map((b) => bendSurface(b, view)),
  ]);
}
