import type { Point } from '@tinwright/core';
import { convexHull } from '@tinwright/core/internal';
import type { Convex } from './polygon.js';

/** A polygon moved. mm */
export const shifted = (shape: Convex, dx: number, dz: number): Convex =>
  shape.map(([x, z]): Point => [x + dx, z + dz]);

/** All that a convex polygon passes over while it moves along a straight line. mm */
export const swept = (shape: Convex, dx: number, dz: number): Convex =>
  convexHull([...shape, ...shifted(shape, dx, dz)]);
