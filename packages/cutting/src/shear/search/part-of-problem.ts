import type { ShearProblem } from '../problem.js';
import type { Layout } from './layout.js';
import type { Filled } from './pack.js';

/** A problem of some items of another, with the sheets of its kinds that are left. */
export function partOfProblem(
  { items, bins }: ShearProblem,
  kept: readonly number[],
  sheets: readonly Filled[],
): ShearProblem {
  const used = bins.map((_, b) => sheets.filter((s) => s.bin === b).length);
  return {
    items: kept.map((i) => items[i] as ShearProblem['items'][number]),
    bins: bins.map((bin, b) => ({
      ...bin,
      count: bin.count - (used[b] as number),
      ways: Uint8Array.from(kept, (i) => bin.ways[i] as number),
    })),
  };
}

/** A sheet of such a problem with the items of the whole one. */
export function asWhole({ bin, layout }: Filled, kept: readonly number[]): Filled {
  const named = (l: Layout): Layout =>
    'item' in l
      ? { ...l, item: l.item < 0 ? l.item : (kept[l.item] as number) }
      : { ...l, children: l.children.map(named) };
  return { bin, layout: named(layout) };
}
