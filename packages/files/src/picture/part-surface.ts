import type { Pose } from '@tinwright/core';
import type { Mark } from '@tinwright/core/family';
import { homePose, place3, type Standing, stand } from '@tinwright/core/internal';
import { bendSurface } from './bend-surface.js';
import { panelSurface } from './panel-surface.js';
import { join, type Surface, type SurfaceLine } from './surface.js';
import type { View } from './view.js';

const CROSS = 2; // mm, half the size of a mark
const ABOVE = 0.02; // mm off the face, so that the face does not hide it

/** Marks by panel, in the panel's frame. */
export type PanelMarks = ReadonlyMap<string, readonly Mark[]>;

/** The whole surface of a formed part standing at `pose`. The view only decides where round faces show a contour. */
export function partSurface(
  formed: Standing,
  view: View,
  pose: Pose = homePose(),
  marks: PanelMarks = new Map(),
): Surface {
  const placed = stand(formed, pose);
  return join([
    ...placed.panels.map((p) => panelSurface(placed, p)),
    ...placed.bends.map((b) => bendSurface(b, view)),
    { facets: [], lines: markLines(placed, marks) },
  ]);
}

/** A small cross on both faces for every mark on whole metal; holes show as holes. */
function markLines({ panels, thickness }: Standing, marks: PanelMarks): readonly SurfaceLine[] {
  return panels.flatMap((panel) => {
    const whole = (marks.get(panel.id) ?? []).filter((m) => m.hole === null);
    const line = (x: number, y: number, z: number, s: number): SurfaceLine => ({
      from: place3(panel.pose, [x - CROSS, y - s * CROSS, z]),
      to: place3(panel.pose, [x + CROSS, y + s * CROSS, z]),
      kind: 'mark',
    });
    return whole.flatMap(({ at: [x, y] }) =>
      [-ABOVE, thickness + ABOVE].flatMap((z) => [line(x, y, z, 1), line(x, y, z, -1)]),
    );
  });
}
