import { type Box, boxOf } from './loop.js';

/**
 * Pairs of boxes that come within `reach` of each other, by their indices, the lower first, in order; of two lists
 * where `others` is given. Swept along the side they spread over most: about n log n for boxes that mostly lie apart.
 */
export function nearPairs(
  boxes: readonly Box[],
  reach: number,
  others: readonly Box[] = boxes,
): readonly (readonly [number, number])[] {
  const pairs: (readonly [number, number])[] = [];
  eachNearPair(boxes, reach, (i, j) => void pairs.push([i, j]), others);
  return pairs.sort((p, q) => p[0] - q[0] || p[1] - q[1]);
}

/** The same one by one as the sweep meets them, none kept: boxes that all lie near each other make n² pairs. */
export function eachNearPair(
  boxes: readonly Box[],
  reach: number,
  visit: (first: number, second: number) => void,
  others: readonly Box[] = boxes,
): void {
  if (boxes.length === 0 || others.length === 0) return;
  const axis = longAxis(others);
  const own = boxes.map((box, i) => ({ box, i, of: boxes }));
  const all = others === boxes ? own : [...own, ...others.map((box, i) => ({ box, i, of: others }))];
  all.sort((a, b) => a.box.min[axis] - b.box.min[axis]);
  all.forEach((a, k) => {
    for (let j = k + 1; j < all.length; j++) {
      const b = all[j] as (typeof all)[number];
      if (b.box.min[axis] > a.box.max[axis] + 2 * reach) return; // so are all that follow
      if (a.of === b.of && others !== boxes) continue;
      const [first, second] = (others === boxes ? a.i < b.i : a.of === boxes) ? [a, b] : [b, a];
      if (near(first.box, second.box, reach)) visit(first.i, second.i);
    }
  });
}

function longAxis(boxes: readonly Box[]): 0 | 1 {
  const { min, max } = boxOf(boxes.flatMap((b) => [b.min, b.max]));
  return max[1] - min[1] > max[0] - min[0] ? 1 : 0;
}

const near = (a: Box, b: Box, reach: number): boolean =>
  a.min[0] - reach <= b.max[0] &&
  b.min[0] - reach <= a.max[0] &&
  a.min[1] - reach <= b.max[1] &&
  b.min[1] - reach <= a.max[1];
