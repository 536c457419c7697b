import type { Line, Point } from '@tinwright/core';
import { NEAR, same } from './strokes.js';

/** Strokes without those that are mirror images of others about the middle of the blank. */
export interface Folded {
  readonly strokes: readonly Line[];
  /** Left to right, near to far: where every stroke has its image. */
  readonly mirrored: readonly [boolean, boolean];
}

/** The part of a set of strokes that has to be told, the rest being its mirror images. @param size of the blank, mm */
export function folded(strokes: readonly Line[], size: Point): Folded {
  const image = ([a, b]: Line, axis: 0 | 1): Line => [flip(a, axis, size), flip(b, axis, size)];
  const alike = ([a, b]: Line, [c, d]: Line) => (same(a, c) && same(b, d)) || (same(a, d) && same(b, c));
  const whole = (axis: 0 | 1) => strokes.every((s) => strokes.some((t) => alike(image(s, axis), t)));
  const mirrored = [whole(0), whole(1)] as const;
  const middle = ([a, b]: Line, axis: 0 | 1) => (a[axis] + b[axis]) / 2;
  const kept = strokes.filter((s) =>
    ([0, 1] as const).every((axis) => !mirrored[axis] || middle(s, axis) <= size[axis] / 2 + NEAR),
  );
  return { strokes: kept, mirrored };
}

const flip = ([x, y]: Point, axis: 0 | 1, size: Point): Point =>
  axis === 0 ? [size[0] - x, y] : [x, size[1] - y];
