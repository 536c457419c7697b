import type { Material } from '@tinwright/core';
import type { Profile } from '../machines/shop.js';

/** A constant of the air-bending formula F = C·Rm·L·T²/V. */
export interface ForceConstant {
  readonly value: number;
  readonly source: string;
}

/**
 * Constants by profile. Usual: 1.33 for a V die, textbook form (Groover). Strict: 1.48, the mean that fits a tool
 * maker's printed chart for Rm 450 within some 5 % (1.41 to 1.56); the trade's 1.42 lies between.
 */
export const FORCE_CONSTANTS: Readonly<Record<Profile, ForceConstant>> = {
  strict: { value: 1.48, source: "mean of a tool maker's printed chart, back-fitted" },
  usual: { value: 1.33, source: 'Groover, Fundamentals of Modern Manufacturing, V bending' },
};

/**
 * Force to air-bend, kN: C·Rm·L·T²/V.
 * @param tensile N/mm²  @param length mm  @param thickness mm  @param opening of the V, mm
 */
export function bendForce(
  constant: number,
  tensile: number,
  length: number,
  thickness: number,
  opening: number,
): number {
  return (constant * tensile * length * thickness ** 2) / opening / 1000;
}

/** Tensile strength a force is computed with: the greatest the metal may have. N/mm² */
export const forceTensile = ({ tensile }: Material): number => tensile[1];

/** Inside radius an air bend comes out at, mm. Source: makers' printed table, R about 0.16 V for mild steel. */
export const airRadius = (opening: number): number => 0.16 * opening;

/**
 * Shortest flange over a V die, outside, mm: V / (2·cos(θ/2)). Source: derived; a maker's note has the factors.
 * @param opening of the V, mm  @param angle bent through over the die, degrees, under 180
 */
export function leastVFlange(opening: number, angle: number): number {
  return opening / (2 * Math.cos((angle * Math.PI) / 360));
}
