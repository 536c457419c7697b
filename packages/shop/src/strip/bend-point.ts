import { outsideSetback } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import type { FitPoint } from './least-squares.js';
import type { MeasuredStrip, MeasuredStrips, Reading } from './measured.js';

const MIDDLE_K = 0.4; // good enough for what a reading of the angle weighs

type Sheet = Pick<MeasuredStrips, 'thickness' | 'insideRadius'>;

/**
 * What a strip says of K, as a point of y = K·x: from flat = leg + leg − deduction and
 * deduction = 2·setback − A·(R + K·T) follow x = A·T and y = 2·setback − (leg + leg − flat) − A·R. Its variance is that
 * of three lengths, and of the angle by what it moves y.
 */
export function bendPoint(
  { angle, flat, legs }: MeasuredStrip,
  { thickness: T, insideRadius: R }: Sheet,
  reading: Reading,
): FitPoint {
  const A = radians(angle);
  const setback = outsideSetback({ thickness: T, insideRadius: R, angle });
  const taken = legs[0] + legs[1] - flat;
  // over 90° legs go to the outer tangent, which the angle does not move
  const perRadian = angle <= 90 ? (R + T) / Math.cos(A / 2) ** 2 : 0;
  const moved = (perRadian - R - MIDDLE_K * T) * radians(reading.angle);
  return { x: A * T, y: 2 * setback - taken - A * R, variance: 3 * reading.length ** 2 + moved ** 2 };
}

/** Set angle against the angle left, as a point of y = m·x; both are read with the same protractor. */
export function springPoint({ angle, set }: MeasuredStrip, reading: Reading): FitPoint | null {
  return set === null ? null : { x: angle, y: set, variance: 2 * reading.angle ** 2 };
}
