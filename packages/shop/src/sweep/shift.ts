import type { Point } from '@tinwright/core';
import type { Convex } from './polygon.js';

/** A polygon moved. mm */
export const shifted = (shape: Convex, dx: number, dz: number): Convex =>
  shape.map(([x, z]): Point => [x + dx, z + dz]);
