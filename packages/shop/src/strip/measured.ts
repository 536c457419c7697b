import type { Unit } from '@tinwright/core';
import { frozen } from '@tinwright/core/internal';

/** One bent strip as it was measured. Lengths mm, angles degrees bent through. */
export interface MeasuredStrip {
  readonly name: string;
  /** Flat size across the bend before bending: the whole strip, or between its witness lines. */
  readonly flat: number;
  /** The two legs after bending, outside, from where the outside faces would meet to the ends or the witness lines. */
  readonly legs: readonly [number, number];
  /** What is left when the tools let go. */
  readonly angle: number;
  /** What it was bent to; null when that was not read. */
  readonly set: number | null;
  /** Along the bend; null when that was not measured. */
  readonly width: number | null;
}

/** What one reading may be off: one standard error of a rule or caliper, mm, and of a protractor, degrees. */
export interface Reading {
  readonly length: number;
  readonly angle: number;
}

/** Bent strips of one metal, thickness and inside radius. Lengths mm. */
export interface MeasuredStrips {
  readonly units: Unit;
  /** Empty when none was given. */
  readonly name: string;
  readonly material: string;
  readonly thickness: number;
  readonly insideRadius: number;
  readonly reading: Reading;
  readonly strips: readonly MeasuredStrip[];
}

/** A rule or caliper and a protractor read by hand. Common practice, no source. */
export const USUAL_READING: Reading = frozen({ length: 0.1, angle: 0.5 });
