import type { Pose, Vec3 } from '@tinwright/core';

/** A flat convex piece of a part's surface, seen from outside counter-clockwise. */
export interface Facet {
  readonly corners: readonly Vec3[];
  readonly normal: Vec3;
}

/** A line on a part's surface: where it ends or turns sharply (`edge`), or along the middle of a bend (`bend`). */
export interface SurfaceLine {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly kind: 'edge' | 'bend';
}

/** What a picture is drawn from. */
export interface Surface {
  readonly facets: readonly Facet[];
  readonly lines: readonly SurfaceLine[];
}

/** Where a formed part stands; `pose` maps its own frame into the scene. */
export interface Standing {
  readonly pose: Pose;
}

export function join(surfaces: readonly Surface[]): Surface {
  return { facets: surfaces.flatMap((s) => s.facets), lines: surfaces.flatMap((s) => s.lines) };
}
