import type { Point } from '@tinwright/core';

const BESIDE = 1e-4; // mm to either side of a line of sight
const DEPTH = 1e-3; // mm of metal that blocks it

type Span = readonly [number, number];

/**
 * What of an upright (axis 0) or level (axis 1) line lies in metal on both its sides, as spans of the other coordinate,
 * in order. A line along an edge is free.
 */
export function buried(outline: readonly Point[], axis: 0 | 1, value: number): readonly Span[] {
  const [a, b] = [inside(outline, axis, value - BESIDE), inside(outline, axis, value + BESIDE)];
  return a.flatMap(([from, to]) =>
    b.flatMap(([low, high]): readonly Span[] => {
      const span: Span = [Math.max(from, low), Math.min(to, high)];
      return span[1] - span[0] > DEPTH ? [span] : [];
    }),
  );
}

/** Spans of a line inside a closed polygon. */
function inside(outline: readonly Point[], axis: 0 | 1, value: number): readonly Span[] {
  const other = axis === 0 ? 1 : 0;
  const crossings = outline
    .flatMap((p, i): readonly number[] => {
      const q = outline[(i + 1) % outline.length] as Point;
      if (p[axis] > value === q[axis] > value) return [];
      return [p[other] + ((q[other] - p[other]) * (value - p[axis])) / (q[axis] - p[axis])];
    })
    .toSorted((u, v) => u - v);
  return Array.from(
    { length: crossings.length / 2 },
    (_, i): Span => [crossings[2 * i] as number, crossings[2 * i + 1] as number],
  );
}
