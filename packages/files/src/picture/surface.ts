import type { Vec3 } from '@tinwright/core';

/** A flat piece of a part's surface, its corners seen from outside counter-clockwise: convex, or with holes. */
export interface Facet {
  readonly corners: readonly Vec3[];
  readonly normal: Vec3;
  readonly holes?: readonly (readonly Vec3[])[];
  /** Corners of the convex pieces of one with holes, each counter-clockwise. */
  readonly pieces?: () => Iterable<readonly Vec3[]>;
}

/** A line on a part's surface: an edge, the middle of a bend, or a fastener's mark. */
export interface SurfaceLine {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly kind: LineKind;
}

/** What a line on a surface is. */
export type LineKind = 'edge' | 'bend' | 'mark';

/** What a picture is drawn from, made as it is asked for: a sieve has a hundred thousand lines. */
export interface Surface {
  readonly facets: Iterable<Facet>;
  readonly lines: Iterable<SurfaceLine>;
}

/** Things that are made anew each time they are gone through. */
export const anew = <T>(make: () => Iterator<T>): Iterable<T> => ({ [Symbol.iterator]: make });

/** Corners of a facet's convex pieces. */
export const piecesOf = ({ corners, pieces }: Facet): Iterable<readonly Vec3[]> => pieces?.() ?? [corners];

export function join(surfaces: readonly Surface[]): Surface {
  return {
    facets: anew(function* () {
      for (const { facets } of surfaces) yield* facets;
    }),
    lines: anew(function* () {
      for (const { lines } of surfaces) yield* lines;
    }),
  };
}
