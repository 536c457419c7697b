import type { Point } from './point.js';

/** A rigid move of the plane: p → origin + p.x·x + p.y·y. */
export interface Frame {
  readonly origin: Point;
  readonly x: Point;
  readonly y: Point;
}

/** Bring a point of the frame into the plane around it. */
export function place(f: Frame, p: Point): Point {
  return [f.origin[0] + f.x[0] * p[0] + f.y[0] * p[1], f.origin[1] + f.x[1] * p[0] + f.y[1] * p[1]];
}

function turn(f: Frame, v: Point): Point {
  return [f.x[0] * v[0] + f.y[0] * v[1], f.x[1] * v[0] + f.y[1] * v[1]];
}

/** First `inner`, then `outer`. */
export function compose(outer: Frame, inner: Frame): Frame {
  return { origin: place(outer, inner.origin), x: turn(outer, inner.x), y: turn(outer, inner.y) };
}
