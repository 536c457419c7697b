import { value as v } from '../schema/value.js';

/** Where a row of holes begins and ends. */
export const rowEdge = v.maybe(
  v.size('from the sides to the middle of the first and the last; evenly spread when left out'),
);

/**
 * Middles of holes in a row across a width, mm: the first and last off the sides by `edge`, or all spread evenly where
 * that is null.
 */
export function holeRow(width: number, count: number, edge: number | null): readonly number[] {
  if (count === 1) return [width / 2];
  const first = edge ?? width / (2 * count);
  const pitch = (width - 2 * first) / (count - 1);
  return Array.from({ length: count }, (_, i) => first + i * pitch);
}
