import type { Relief } from '../corner-style.js';

const EIGHTH = 25.4 / 8;

/** How far a relief reaches from the root of its notch, mm. */
export function reliefReach(relief: Relief | null): number {
  if (relief === null) return 0;
  return relief.kind === 'hole' ? relief.diameter / 2 : relief.depth;
}

/**
 * Round relief at a notch: diameter twice the inside radius, at least 1/8 in up to 0.064 in thick and 3/16 in
 * above. Source: FAA-H-8083-31 ch. 4 (its text also says one radius; the larger is taken).
 */
export function reliefHole(thickness: number, insideRadius: number): Relief {
  const least = thickness <= 0.064 * 25.4 ? EIGHTH : 1.5 * EIGHTH;
  return { kind: 'hole', diameter: Math.max(2 * insideRadius, least) };
}

/**
 * Square relief one thickness past both tangent lines, at least 1 mm.
 * Source: common practice, no source (sources disagree between T and 2T + R counted from different lines).
 */
export function reliefSlot(thickness: number): Relief {
  return { kind: 'slot', depth: Math.max(thickness, 1) };
}
