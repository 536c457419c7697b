import { MM_PER_INCH } from '../../units/length.js';
import type { Relief } from '../draft/corner-style.js';

const EIGHTH = MM_PER_INCH / 8;

/**
 * Round relief at a notch, mm: diameter twice the inside radius, at least 1/8 in for sheet up to 0.064 in thick and
 * 3/16 in for thicker. Source: FAA-H-8083-31 ch. 4 (its text also says one radius; the larger is taken).
 */
export function reliefHole(thickness: number, insideRadius: number): Relief {
  const least = thickness <= 0.064 * MM_PER_INCH ? EIGHTH : 1.5 * EIGHTH;
  return { kind: 'hole', diameter: Math.max(2 * insideRadius, least) };
}

/**
 * Square relief that reaches one thickness past both tangent lines, at least 1 mm. @param thickness mm
 * Source: common practice, no source (sources disagree between T and 2T + R counted from different lines).
 */
export function reliefSlot(thickness: number): Relief {
  return { kind: 'slot', depth: Math.max(thickness, 1) };
}
