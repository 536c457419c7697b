import type { Point } from '@tinwright/core';
import type { Shape } from '../drawing.js';
import type { MarkStyle } from './style.js';

const HALF = 3; // mm, half the size of a cross or dash
const RING = 1; // mm, radius of a circle

/** A fastener's place as a style marks it. */
export function markShapes([x, y]: Point, style: MarkStyle): readonly Shape[] {
  switch (style) {
    case 'cross':
      return [
        { kind: 'line', from: [x - HALF, y - HALF], to: [x + HALF, y + HALF] },
        { kind: 'line', from: [x - HALF, y + HALF], to: [x + HALF, y - HALF] },
      ];
    case 'dash':
      return [{ kind: 'line', from: [x - HALF, y], to: [x + HALF, y] }];
    case 'point':
      return [{ kind: 'point', at: [x, y] }];
    case 'circle':
      return [{ kind: 'circle', centre: [x, y], radius: RING }];
    case 'none':
      return [];
  }
}
