import { type Material, radians } from '@tinwright/core';
import { thicknessLimit } from '../../machines/capacity.js';
import type { Brake, Profile } from '../../machines/shop.js';
import { setBackFor } from '../../tools/leaf-tools.js';
import { gaugesLess } from './gauges.js';

const RATED_FLANGE = 25.4; // mm; capacities are rated with a flange of an inch
const LEAST_HOLD = 6; // mm of sheet under the fingers behind their tips; judgement
const MANUAL = "a 4 ft brake's printed manual: rated with a flange of 25 mm over its full length";

/** A number with where it comes from. */
export interface Sourced {
  readonly value: number;
  readonly source: string;
}

/** What is bent: sheet, inside radius it is set for, length of the line. mm */
export interface LeafBend {
  readonly thickness: number;
  readonly insideRadius: number;
  readonly length: number;
  readonly material: Material;
}

/** What is kept off every tool, in words. */
export const MARGIN = 'half a millimetre and two thousandths of the blank kept off (judgement)';

/** Kept off every tool, mm: half a millimetre and two thousandths of the part. Judgement. */
export const marginFor = (longest: number): number => 0.5 + 0.002 * longest;

/** Thickest sheet a brake takes, mm: by its list, and by the stricter rule two gauges less with box fingers. */
export function leafThickness(brake: Brake, material: Material, profile: Profile): Sourced {
  const own = brake.capacity.some((c) => c.material === material.name);
  const { thickness, source } = thicknessLimit(brake.capacity, material);
  if (profile === 'usual') return { value: thickness, source };
  const steel = brake.capacity.find((c) => c.material === 'mild-steel');
  // stainless without a row of its own: four gauges less than mild steel, where that is less
  const stainless = !own && steel !== undefined && material.name.startsWith('stainless');
  const listed = stainless ? Math.min(thickness, gaugesLess(steel.thickness, 4)) : thickness;
  return {
    value: gaugesLess(listed, 2),
    source: `${source}; 2 gauges less with box fingers${stainless ? ', 4 less on stainless' : ''} by ${MANUAL} (profile strict; take profile usual when the shop file counts the fingers in)`,
  };
}

/**
 * Shortest flange a leaf turns, outside, mm: past the hinge by set-back, radius and thickness; by the machine's own
 * figure; and by its load, which at full capacity and length is an inch.
 * Source: derived, the square law from the plastic moment σ·T²/4.
 */
export function leastLeafFlange(brake: Brake, bend: LeafBend, profile: Profile): Sourced {
  const { thickness, insideRadius, length, material } = bend;
  const most = leafThickness(brake, material, profile).value;
  const terms: readonly Sourced[] = [
    {
      value: setBackFor(brake, thickness, insideRadius) + insideRadius + thickness,
      source: 'set-back, inside radius and thickness past the hinge, derived',
    },
    { value: brake.lowestFlange, source: `lowest flange of the ${brake.name} in the shop file` },
    {
      value: RATED_FLANGE * (thickness / most) ** 2 * Math.min(1, length / brake.length),
      source: `load of the bend against the capacity of the ${brake.name}${profile === 'strict' ? ' less 2 gauges (profile strict)' : ''}, derived; ${MANUAL}`,
    },
  ];
  return terms.reduce((a, b) => (b.value > a.value ? b : a));
}

/** Sheet the fingers need to hold behind the line, mm. Judgement. */
export function leastHold(brake: Brake, { thickness, insideRadius }: LeafBend): Sourced {
  return {
    value: setBackFor(brake, thickness, insideRadius) + LEAST_HOLD,
    source: `set-back and ${LEAST_HOLD} mm under the fingers, judgement`,
  };
}

/** A wall on the leaf with a flange turned in at its end, both square. mm */
export interface Return {
  readonly wall: number;
  readonly thickness: number;
  readonly insideRadius: number;
  readonly margin: number;
}

/**
 * Longest flange at the end of a wall that clears the fingers while the wall is turned up, outside, mm: its inner corner
 * stays off the face that rises from the nose, its outer one off the upright.
 * Source: derived; at 90° without overbend r = s + (H − 2T) / tan ν, at most s + the upright.
 */
export function longestReturn(brake: Brake, { wall, thickness: T, insideRadius, margin }: Return): number {
  const { finger, overbend } = brake;
  const s = setBackFor(brake, T, insideRadius);
  const turn = radians(90 + overbend);
  // where the beam hangs low the face is as steep as it leaves room for
  const tan = Math.min(Math.tan(radians(finger.noseAngle)), brake.clearHeight / finger.upright);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const inner = wall - T;
  const face = (inner * sin - T + (s + inner * cos) * tan - margin * Math.hypot(1, tan)) / (sin * tan - cos);
  const back = (to: number) => Math.max(0, (s + to - margin + wall * cos) / sin);
  const nosed = Math.max(0, Math.min(face, back(finger.upright)));
  // a corner that passes over the fingers, where they are low, has only the beam before it
  const over = inner * sin + nosed * cos > T + brake.clearHeight;
  return over ? Math.max(nosed, back(brake.beam)) : nosed;
}
