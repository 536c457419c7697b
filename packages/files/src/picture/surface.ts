import type { Vec3 } from '@tinwright/core';

/** A flat convex piece of a part's surface, seen from outside counter-clockwise. */
export interface Facet {
  readonly corners: readonly Vec3[];
  readonly normal: Vec3;
}

/** A line on a part's surface: an edge, the middle of a bend, or a fastener's mark. */
export interface SurfaceLine {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly kind: LineKind;
}

/** What a line on a surface is. */
export type LineKind = 'edge' | 'bend' | 'mark';

/** What a picture is drawn from. */
export interface Surface {
  readonly facets: readonly Facet[];
  readonly lines: readonly SurfaceLine[];
}

export function join(surfaces: readonly Surface[]): Surface {
  return { facets: surfaces.flatMap((s) => s.facets), lines: surfaces.flatMap((s) => s.lines) };
}
