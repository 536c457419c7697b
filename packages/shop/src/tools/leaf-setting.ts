import type { Material } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import { thicknessLimit } from '../machines/capacity.js';
import type { Brake } from '../machines/shop.js';

/** What a leaf brake is set to for a bend, and what comes of it. mm, degrees */
export interface LeafSetting {
  /** How far the fingers' tips stand behind the hinge. */
  readonly setBack: number;
  /** Furthest the leaf can bend so: past it the sheet would lie against the nose, or the leaf meets its stop. */
  readonly most: number;
}

/**
 * Set-back for a bend, opened as far as its radius and angle ask for and the brake allows: the sheet bends about the
 * hinge, so R = s / tan(A/2) − T, and its outside passes the nose up to 2·atan(s/T).
 * Source: rigid model of the leaf, derived; NAVEDTRA 14119 has s = T for a sharp bend of 90°.
 * @param angle bent through, degrees  @param set what the leaf is turned to for it
 */
export function leafSetting(
  brake: Brake,
  thickness: number,
  insideRadius: number,
  { angle, set }: { readonly angle: number; readonly set: number },
): LeafSetting {
  const [least, most] = brake.setBack;
  const wanted = (insideRadius + thickness) * halfTan(angle);
  const passes = thickness * halfTan(set);
  const setBack = Math.min(Math.max(wanted, passes, least * thickness), most * thickness);
  return { setBack, most: mostAt(brake, thickness, setBack) };
}

const HEM_FOLD = 120; // degrees a hem is folded to at least before it is closed; common practice, no source

/** Setting a hem is folded with: that of a square bend, opened where it would not fold far enough. */
export function foldSetting(brake: Brake, thickness: number, insideRadius: number): LeafSetting {
  const { setBack } = leafSetting(brake, thickness, insideRadius, { angle: 90, set: HEM_FOLD });
  return { setBack, most: mostAt(brake, thickness, setBack) };
}

/** Radius a leaf brake makes of a bend, mm. @param angle bent through, degrees */
export const leafRadius = (setBack: number, thickness: number, angle: number): number =>
  setBack / halfTan(angle) - thickness;

const halfTan = (angle: number) => Math.tan(radians(Math.min(angle, 179)) / 2);

const mostAt = ({ finger, leaf }: Brake, thickness: number, setBack: number): number =>
  Math.min((2 * Math.atan(setBack / thickness) * 180) / Math.PI + 1e-9, 180 - finger.noseAngle, leaf.stop);

/**
 * Shortest flange the leaf turns without giving way, outside, mm: past the hinge by set-back, radius and thickness; by
 * the machine's own figure; and by its load, which at full capacity and length is the flange it is rated with.
 * Source: derived, the square law from the plastic moment σ·T²/4.
 */
export function leastFlange(
  brake: Brake,
  material: Material,
  {
    thickness,
    insideRadius,
    length,
  }: { readonly thickness: number; readonly insideRadius: number; readonly length: number },
  setBack: number,
): number {
  const { thickness: most } = thicknessLimit(brake.capacity, material);
  const load = brake.ratedFlange * (thickness / most) ** 2 * Math.min(1, length / brake.length);
  return Math.max(setBack + insideRadius + thickness, brake.lowestFlange, load);
}

/** Sheet the fingers need behind the line, mm. */
export const leastHold = (brake: Brake, setBack: number): number => setBack + brake.hold;
