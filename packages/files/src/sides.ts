import { type Loop, type Segment, segments } from '@tinwright/core';

/** A closed loop, or a path from end to end: corners, each with the bulge of the side to the next; a path's last counts nothing. */
export type Cornered =
  | { readonly kind: 'loop'; readonly loop: Loop }
  | { readonly kind: 'path'; readonly path: Loop };

/** Corners of a loop or a path. */
export const cornersOf = (shape: Cornered): Loop => (shape.kind === 'loop' ? shape.loop : shape.path);

/** The sides of a loop, or of a path, which does not come back. */
export const sidesOf = (shape: Cornered): readonly Segment[] =>
  shape.kind === 'loop' ? segments(shape.loop) : segments(shape.path).slice(0, -1);
