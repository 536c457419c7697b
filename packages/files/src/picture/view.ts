import type { Point, Vec3 } from '@tinwright/core';

/** A point as seen: across and up on the page (mm at true length along the axes), and nearness to the viewer. */
export interface Seen {
  readonly at: Point;
  readonly near: number;
}

/** A direction of view: where page axes and the viewer lie in space. */
export interface View {
  readonly across: Vec3;
  readonly up: Vec3;
  readonly viewer: Vec3;
}

const C = Math.cos(Math.PI / 6);

/**
 * Isometric view by ISO 5456-3 from the south-east, above: x runs to the lower right, y to the upper right, both
 * at 30° to the horizontal, z up; the three axes at one scale, drawn at true length.
 */
export const ISOMETRIC: View = { across: [C, C, 0], up: [-0.5, 0.5, 1], viewer: [1, -1, 1] };

const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export function see(view: View, p: Vec3): Seen {
  return { at: [dot(view.across, p), dot(view.up, p)], near: dot(view.viewer, p) };
}

/** True when a face with this outward normal is turned to the viewer. */
export function faces(view: View, normal: Vec3): boolean {
  return dot(view.viewer, normal) > 1e-9;
}

/** Component of a direction towards the viewer. */
export function towards(view: View, direction: Vec3): number {
  return dot(view.viewer, direction);
}
