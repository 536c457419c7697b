/**
 * Places as near to those wanted as they can be with `pitch` between neighbours, in the same order: the least sum of
 * squares, found by pooling those that crowd each other. The first does not go below `least`, nor the last above `most`
 * as long as all find room between them.
 * @param wanted in rising order
 */
export function spread(
  wanted: readonly number[],
  pitch: number,
  least: number,
  most: number = Infinity,
): readonly number[] {
  // with the pitch taken off, the places only have to rise
  const pools: { sum: number; count: number }[] = [];
  wanted.forEach((w, i) => {
    pools.push({ sum: w - i * pitch, count: 1 });
    for (;;) {
      const [a, b] = [pools.at(-2), pools.at(-1)];
      if (a === undefined || b === undefined || a.sum / a.count <= b.sum / b.count) return;
      pools.splice(-2, 2, { sum: a.sum + b.sum, count: a.count + b.count });
    }
  });
  const level = pools.flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count));
  const highest = most - (wanted.length - 1) * pitch;
  return level.map((l, i) => Math.max(Math.min(l, highest), least) + i * pitch);
}
