import { contains, type Loop, type Point } from '@tinwright/core';

/** A cut to be put in order. */
interface Cut {
  readonly piece: string;
  readonly kind: 'hole' | 'outline';
  readonly drawn: Loop;
}

const startOf = ({ drawn }: Cut): Point => (drawn[0] as Loop[number]).at;
const far = (a: Point, b: Point) => (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2;

/**
 * Cuts in the order that keeps the sheet whole longest: a piece after all that lie in its holes, its holes before its
 * outline, and of what may come next the nearest, from the lower left corner on.
 */
export function inOrder<C extends Cut>(cuts: readonly C[]): readonly C[] {
  const pieces = [...new Set(cuts.map((c) => c.piece))].map((id) => cuts.filter((c) => c.piece === id));
  const inside = (a: readonly C[], b: readonly C[]) =>
    b.some((hole) => hole.kind === 'hole' && contains(hole.drawn, startOf(a.at(-1) as C)));
  const done: C[] = [];
  let left = pieces;
  for (let at: Point = [0, 0]; left.length > 0; ) {
    const ready = left.filter((p) => !left.some((q) => q !== p && inside(q, p)));
    const next = nearest(ready, at, (p) => startOf(p.at(-1) as C));
    const holes = next.filter((c) => c.kind === 'hole');
    for (let rest = holes; rest.length > 0; ) {
      const hole = nearest(rest, at, startOf);
      done.push(hole);
      at = startOf(hole);
      rest = rest.filter((h) => h !== hole);
    }
    for (const outline of next.filter((c) => c.kind === 'outline')) {
      done.push(outline);
      at = startOf(outline);
    }
    left = left.filter((p) => p !== next);
  }
  return done;
}

function nearest<T>(list: readonly T[], at: Point, place: (t: T) => Point): T {
  return list.reduce((best, t) => (far(place(t), at) < far(place(best), at) ? t : best));
}
