import Flatbush from 'flatbush';
import type { Box } from './loop.js';

/**
 * Pairs of boxes that come within `reach` of each other, by their indices, the lower first, in order; of two lists
 * where `others` is given. About n log n for boxes that mostly lie apart.
 */
export function nearPairs(
  boxes: readonly Box[],
  reach: number,
  others: readonly Box[] = boxes,
): readonly (readonly [number, number])[] {
  if (boxes.length === 0 || others.length === 0) return [];
  if (boxes.length * others.length <= FEW) return pairsOf(boxes, others, reach);
  const tree = new Flatbush(others.length);
  for (const { min, max } of others) tree.add(min[0], min[1], max[0], max[1]);
  tree.finish();
  return boxes.flatMap(({ min, max }, i) => {
    const later = others === boxes ? (j: number) => j > i : () => true;
    const found = tree.search(min[0] - reach, min[1] - reach, max[0] + reach, max[1] + reach, later);
    return found.toSorted((a, b) => a - b).map((j) => [i, j] as const);
  });
}

const FEW = 1000; // comparisons that take less than a tree

function pairsOf(boxes: readonly Box[], others: readonly Box[], reach: number) {
  const pairs: (readonly [number, number])[] = [];
  boxes.forEach((a, i) => {
    for (let j = others === boxes ? i + 1 : 0; j < others.length; j++) {
      const b = others[j] as Box;
      const apart =
        a.min[0] - reach > b.max[0] ||
        b.min[0] > a.max[0] + reach ||
        a.min[1] - reach > b.max[1] ||
        b.min[1] > a.max[1] + reach;
      if (!apart) pairs.push([i, j]);
    }
  });
  return pairs;
}
