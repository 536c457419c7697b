import type { Layout } from './layout.js';

/** What a sheet is cut into, before pieces are dealt out: a piece of a kind, or parts beside or above each other. */
export type Drawn =
  | { readonly kind: number; readonly w: number; readonly h: number }
  | { readonly way: 'row' | 'column'; readonly children: readonly Drawn[] };

/** Parts beside or above each other; one alone is itself, and parts of parts that lie the same way are told singly. */
export function grouped(way: 'row' | 'column', parts: readonly Drawn[]): Drawn {
  const children = parts.flatMap((d): readonly Drawn[] => ('way' in d && d.way === way ? d.children : [d]));
  return children.length === 1 ? (children[0] as Drawn) : { way, children };
}

/** The same with x and y changed about. */
export function mirrored(drawn: Drawn): Drawn {
  if (!('way' in drawn)) return { kind: drawn.kind, w: drawn.h, h: drawn.w };
  return { way: drawn.way === 'row' ? 'column' : 'row', children: drawn.children.map(mirrored) };
}

/** How many of each kind a pattern takes. */
export function countsOf(drawn: Drawn): ReadonlyMap<number, number> {
  const found = new Map<number, number>();
  const walk = (d: Drawn) => {
    if ('way' in d) d.children.forEach(walk);
    else found.set(d.kind, (found.get(d.kind) ?? 0) + 1);
  };
  walk(drawn);
  return found;
}

/**
 * The pattern with pieces of its kinds, taken from what is left of them: the lists become shorter. Where a kind has run
 * out its place stays empty; null where all have.
 */
export function dealt(drawn: Drawn, left: readonly number[][]): Layout | null {
  if (!('way' in drawn)) {
    const item = left[drawn.kind]?.shift();
    return item === undefined ? null : { item, w: drawn.w, h: drawn.h };
  }
  const children = drawn.children.flatMap((d) => dealt(d, left) ?? []);
  if (children.length === 0) return null;
  return children.length === 1 ? (children[0] as Layout) : { kind: drawn.way, children };
}
