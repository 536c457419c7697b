import type { Loop, Path, Point, Segment } from '@tinwright/core';
import { distance } from '@tinwright/core/internal';

/** A segment with the way to where it comes from. */
type Piece = Segment & { readonly path: Path };

/**
 * Segments joined end to end into closed loops; either end may come first.
 * @param touch mm: ends nearer than this are one
 * @param refuse told an end that no other segment has, or more than one; it throws
 */
export function chained(
  pieces: readonly Piece[],
  touch: number,
  refuse: (at: Point, path: Path, others: number) => never,
): readonly Loop[] {
  const left = [...pieces];
  const loops: Loop[] = [];
  for (let first = left.shift(); first !== undefined; first = left.shift()) {
    const chain: Piece[] = [first];
    let end = first.to;
    while (distance(end, first.from) >= touch) {
      const there = left.filter((p) => distance(p.from, end) < touch || distance(p.to, end) < touch);
      const [next] = there;
      if (next === undefined || there.length > 1)
        return refuse(end, (chain.at(-1) as Piece).path, there.length);
      left.splice(left.indexOf(next), 1);
      const along = distance(next.from, end) < touch;
      chain.push(along ? next : { ...next, from: next.to, to: next.from, bulge: -next.bulge });
      end = (chain.at(-1) as Piece).to;
    }
    loops.push(chain.map(({ from, bulge }) => ({ at: from, bulge })));
  }
  return loops;
}
