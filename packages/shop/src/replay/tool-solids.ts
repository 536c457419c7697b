import type { FlatBend, Point, Vec3 } from '@tinwright/core';
import type { Prism } from '@tinwright/core/internal';
import { prismBetween } from '@tinwright/core/internal';
import type { BendStep } from '../sequence/answer/plan.js';
import { apply, type Rigid } from './rigid.js';

/** From one place along the line to another. mm */
export type Along = readonly [number, number];

const FAR = 1500; // mm, half the length of a tool that covers everything

/** A tool that covers any line. */
export const EVERYWHERE: Along = [-FAR, FAR];

/** A convex section over a stretch of the line. The section is counter-clockwise in x and z. */
export function bar(section: readonly Point[], [y0, y1]: Along): Prism {
  // counter-clockwise in x and z is clockwise seen from +y
  const ring = (y: number) => section.map(([x, z]): Vec3 => [x, y, z]);
  return prismBetween(ring(y1), ring(y0));
}

/** A rectangle in x and z by its least and greatest corner. */
export const box = (x0: number, z0: number, x1: number, z1: number): readonly Point[] => [
  [x0, z0],
  [x1, z0],
  [x1, z1],
  [x0, z1],
];

/** Left end of the bent material along y, as the operator sees it. */
export const leftOf = (bends: readonly FlatBend[], place: Rigid): number =>
  Math.min(...bends.flatMap((b) => b.line.map((p) => apply(place, [p[0], p[1], 0])[1])));

/** Where pieces of tool stand along y: the line's left end, as the operator sees it, is where y is least. */
export function stands(step: BendStep, bends: readonly FlatBend[], place: Rigid): readonly Along[] {
  if (step.tools === null) return [EVERYWHERE];
  const left = leftOf(bends, place);
  return step.tools.map(({ pieces, from, gap }): Along => {
    const wide = pieces.reduce((a, b) => a + b, 0) + gap * (pieces.length - 1);
    return [left + from, left + from + wide];
  });
}
