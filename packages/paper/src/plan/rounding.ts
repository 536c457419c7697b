import { linearTolerance, type ToleranceClass } from '@tinwright/core';
import type { Dims } from '../page/dims.js';

/** What printing in fractions does to some sizes. mm */
export interface Rounding {
  /** Some are printed to a finer step than the others. */
  readonly finer: boolean;
  /** How many are off by more than the marking tolerance, and by how much at most. */
  readonly over: number;
  readonly most: number;
}

/** Sizes that their fractions do not meet, each once, smallest first; none where they are printed in decimals. */
export const roundedOff = (sizes: readonly number[], dims: Dims): readonly number[] =>
  [...new Map(sizes.map((mm) => [dims.fine(mm), mm])).values()]
    .filter((mm) => dims.coarse && dims.error(mm) !== 0)
    .toSorted((a, b) => a - b);

/** True for a size that rounding moves by more than its tolerance. */
export const isOver = (mm: number, dims: Dims, tolerance: ToleranceClass): boolean =>
  Math.abs(dims.error(mm)) > (linearTolerance(mm, tolerance) ?? 0);

/** What is lost by the way sizes are printed. */
export function roundingOf(sizes: readonly number[], dims: Dims, tolerance: ToleranceClass): Rounding {
  const step = Number(dims.name.slice(2));
  const over = roundedOff(sizes, dims).filter((mm) => isOver(mm, dims, tolerance));
  return {
    finer: dims.coarse && sizes.some((mm) => Number(/\/(\d+)$/.exec(dims.text(mm))?.[1] ?? 0) > step),
    over: over.length,
    most: Math.max(0, ...over.map((mm) => Math.abs(dims.error(mm)))),
  };
}
