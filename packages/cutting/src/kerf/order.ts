import type { Loop, Point } from '@tinwright/core';
import { contains, loopBox } from '@tinwright/core/internal';

/** A cut to be put in order. */
interface Cut {
  readonly piece: string;
  readonly kind: 'hole' | 'outline';
  readonly drawn: Loop;
}

/** Which piece comes next: the nearest one, or one far from the last few, so that the sheet stays cooler. */
export type PieceOrder = 'nearest' | 'spread';

/** Should a piece better come later, while no more than these are cut? */
export type Waits = (piece: string, cut: ReadonlySet<string>) => boolean;

/** Pieces that a spread keeps away from: the sheet near them is warm. Common practice, no source. */
const WARM = 3;

const startOf = ({ drawn }: Cut): Point => (drawn[0] as Loop[number]).at;
const far = (a: Point, b: Point) => (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2;

/**
 * Cuts in the order that keeps the sheet whole longest: a piece after all that lie in its holes, its holes before its
 * outline; of the pieces that may come next the nearest, from the lower left corner on, or the coolest.
 */
export function inOrder<C extends Cut>(
  cuts: readonly C[],
  by: PieceOrder = 'nearest',
  waits: Waits = () => false,
): readonly C[] {
  const pieces = byPiece(cuts);
  const inner = pieces.map((p) => pieces.flatMap((q, i) => (q !== p && inside(q, p) ? [i] : [])));
  const done: C[] = [];
  const last: Point[] = [];
  const left = new Set(pieces.keys());
  for (let at: Point = [0, 0]; left.size > 0; ) {
    const able = [...left].filter((i) => inner[i]?.every((k) => !left.has(k)));
    const cut = new Set(done.map((c) => c.piece));
    const begun = able.filter((i) => !waits((pieces[i] as readonly [C])[0].piece, cut));
    const ready = begun.length > 0 ? begun : able;
    const place = (i: number) => startOf((pieces[i] as readonly C[]).at(-1) as C);
    const cool = (i: number) => -Math.min(...last.slice(-WARM).map((p) => far(place(i), p)));
    const next = least(ready, by === 'spread' && last.length > 0 ? cool : (i) => far(place(i), at));
    left.delete(next);
    const own = pieces[next] as readonly C[];
    for (let rest = own.filter((c) => c.kind === 'hole'); rest.length > 0; ) {
      const hole = least(rest, (h) => far(startOf(h), at));
      done.push(hole);
      at = startOf(hole);
      rest = rest.filter((h) => h !== hole);
    }
    for (const outline of own.filter((c) => c.kind === 'outline')) {
      done.push(outline);
      at = startOf(outline);
    }
    last.push(place(next));
  }
  return done;
}

function byPiece<C extends Cut>(cuts: readonly C[]): readonly (readonly C[])[] {
  const found = new Map<string, C[]>();
  for (const cut of cuts) {
    const own = found.get(cut.piece);
    if (own === undefined) found.set(cut.piece, [cut]);
    else own.push(cut);
  }
  return [...found.values()];
}

/** Lies one piece in a hole of another? Boxes first. */
function inside<C extends Cut>(a: readonly C[], b: readonly C[]): boolean {
  const [x, y] = startOf(a.at(-1) as C);
  return b.some((hole) => {
    if (hole.kind !== 'hole') return false;
    const { min, max } = loopBox(hole.drawn);
    return x > min[0] && x < max[0] && y > min[1] && y < max[1] && contains(hole.drawn, [x, y]);
  });
}

function least<T>(list: readonly T[], cost: (t: T) => number): T {
  return list.reduce((best, t) => (cost(t) < cost(best) ? t : best));
}
