// Plane polygons in convex pieces, larger or smaller, by a general library.
import type { CrossSection, ManifoldToplevel } from 'manifold-3d';
import type { V2 } from './rigid.js';

export type Ring = readonly V2[];

const WIDE = 10_000; // mm

/**
 * Convex pieces of a polygon, larger by so many mm all round (smaller where negative).
 * @param band only what lies between two heights
 */
export function piecesOf(
  library: ManifoldToplevel,
  ring: Ring,
  by = 0,
  [low, high]: V2 = [-WIDE, WIDE],
): readonly Ring[] {
  const outline = new library.CrossSection([ring.map(([x, y]): [number, number] => [x, y])], 'NonZero');
  const [from, to] = [Math.max(low, -WIDE), Math.min(high, WIDE)];
  const whole = outline.intersect(
    library.CrossSection.square([2 * WIDE, to - from]).translate([-WIDE, from]),
  );
  return convexPieces(library, by === 0 ? whole : whole.offset(by, 'Miter', 2));
}

/** Convex pieces of an outline; its holes are filled. */
export function convexPieces(library: ManifoldToplevel, shape: CrossSection): readonly Ring[] {
  return shape
    .simplify(0.01)
    .toPolygons()
    .map((p) => p.map(([x, y]): V2 => [x, y]))
    .filter((p) => area(p) > 1e-6)
    .flatMap((ring) => (isConvex(ring) ? [ring] : merged(triangles(library, ring))));
}

export const area = (ring: Ring): number =>
  ring.reduce((s, p, i) => {
    const q = ring[(i + 1) % ring.length] as V2;
    return s + (p[0] * q[1] - q[0] * p[1]) / 2;
  }, 0);

const turnAt = (ring: Ring, i: number): number => {
  const n = ring.length;
  const [a, b, c] = [ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n]] as [V2, V2, V2];
  return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
};

const isConvex = (ring: Ring): boolean => ring.every((_, i) => turnAt(ring, i) >= -1e-9);

function triangles(library: ManifoldToplevel, ring: Ring): readonly Ring[] {
  return library
    .triangulate([ring.map(([x, y]): [number, number] => [x, y])])
    .map((t) => [...t].map((i) => ring[i] as V2));
}

/** Neighbours joined over the edge they share, as long as what comes out is convex. */
function merged(pieces: readonly Ring[]): readonly Ring[] {
  for (const [i, a] of pieces.entries())
    for (const [j, b] of pieces.entries()) {
      if (j <= i) continue;
      const both = joined(a, b);
      if (both !== null) return merged([...pieces.filter((_, k) => k !== i && k !== j), both]);
    }
  return pieces;
}

function joined(a: Ring, b: Ring): Ring | null {
  for (let i = 0; i < a.length; i++) {
    const [p, q] = [a[i], a[(i + 1) % a.length]] as [V2, V2];
    const j = b.findIndex((r, k) => same(r, q) && same(b[(k + 1) % b.length] as V2, p));
    if (j < 0) continue;
    const rest = (ring: Ring, from: number) => [...ring.slice(from), ...ring.slice(0, from)];
    // a from q round to p, then b from after p round to before q
    const both = [...rest(a, (i + 1) % a.length), ...rest(b, (j + 2) % b.length).slice(0, -2)];
    return isConvex(both) ? both : null;
  }
  return null;
}

const same = (p: V2, q: V2) => p[0] === q[0] && p[1] === q[1];
