import type { PartPlan, Point } from '@tinwright/core';
import type { PrintedSizes } from '../page/dims.js';
import type { SightLine } from '../pattern/pattern-ask.js';

/** Where the lines of a pattern lie, counted from either edge of the blank, and its sizes where it goes into something. */
export function printedSizes({ flat, follows }: PartPlan, sights: readonly SightLine[]): PrintedSizes {
  const points: readonly Point[] = [
    ...flat.bends.flatMap((b) => b.line),
    ...sights.flatMap((s) => s.line),
    ...flat.scribes.flat(),
    ...flat.outline.map((v) => v.at),
  ];
  const size = flat.blank.max;
  const lines = ([0, 1] as const).flatMap((k) => points.flatMap((p) => [p[k], size[k] - p[k]]));
  return {
    lines: lines.filter((v) => v > 0),
    inside: follows.some((f) => f.play > 0) ? size : [],
  };
}
