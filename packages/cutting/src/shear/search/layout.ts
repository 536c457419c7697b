import { COLUMN, LEAF, ROW, type SlackTree } from './slack-tree.js';

/** The number of an item that is none: a piece kept whole because it is worth keeping. */
export const SPARE = -1;

/** What lies on one sheet: an item, or parts side by side (`row`) or one above the other (`column`). */
export type Layout =
  | { readonly item: number; readonly w: number; readonly h: number }
  | { readonly kind: 'row' | 'column'; readonly children: readonly Layout[] };

/** A tree as plain data. */
export function layoutOf(tree: SlackTree, k: number): Layout {
  const kind = tree.kind[k];
  if (kind === LEAF) return { item: tree.item[k] as number, w: tree.w[k] as number, h: tree.h[k] as number };
  const children: Layout[] = [];
  for (let c = k + 1; c < (tree.end[k] as number); c = tree.end[c] as number)
    children.push(layoutOf(tree, c));
  return { kind: kind === ROW ? 'row' : 'column', children };
}

/** A layout with one more piece beside or above what a tree has at node `at`. */
export function withSpare(
  tree: SlackTree,
  spare: { readonly node: number; readonly direction: number; readonly w: number; readonly h: number },
): Layout {
  const piece: Layout = { item: SPARE, w: spare.w, h: spare.h };
  const grow = (k: number): Layout => {
    const own = tree.kind[k];
    const kind = spare.direction === COLUMN ? 'column' : 'row';
    if (k === spare.node && own === spare.direction) return { kind, children: [...below(k), piece] };
    if (k === spare.node) return { kind, children: [own === LEAF ? layoutOf(tree, k) : inner(k), piece] };
    return own === LEAF ? layoutOf(tree, k) : inner(k);
  };
  const inner = (k: number): Layout => ({
    kind: tree.kind[k] === ROW ? 'row' : 'column',
    children: below(k),
  });
  const below = (k: number): Layout[] => {
    const children: Layout[] = [];
    for (let c = k + 1; c < (tree.end[k] as number); c = tree.end[c] as number) children.push(grow(c));
    return children;
  };
  return grow(0);
}
