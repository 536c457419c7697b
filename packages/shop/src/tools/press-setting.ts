import type { Die, Press, Punch } from '../machines/shop.js';
import { airRadius } from '../metal/press-force.js';

const LEAST_OPENING = 5; // thicknesses: over less the sheet is marked and the force runs away; common practice, no source
const NEAREST = 2; // dies that are taken into account: those whose radius is near the one wanted

/** Furthest a punch bends over a die, degrees: the slimmer of both angles stops it. */
export const mostAngle = (punch: Punch, die: Die): number => 180 - Math.max(die.angle, punch.angle);

/** Furthest any punch of a press bends over a die, degrees. */
export const mostOver = ({ punches }: Pick<Press, 'punches'>, die: Die): number =>
  Math.max(...punches.map((p) => mostAngle(p, die)));

/**
 * Of the dies that are wide enough for a sheet and over which a press bends so far, those whose radius comes nearest to
 * the one wanted, nearest first. @param sheet thickness and inside radius, mm
 */
export function diesFor(
  press: Pick<Press, 'punches' | 'dies'>,
  { thickness, insideRadius }: { readonly thickness: number; readonly insideRadius: number },
  through: number,
): readonly Die[] {
  const off = (d: Die) => Math.abs(Math.log(airRadius(d.opening) / Math.max(insideRadius, 0.1)));
  return press.dies
    .filter((d) => d.opening >= LEAST_OPENING * thickness - 1e-9 && through <= mostOver(press, d) + 1e-9)
    .toSorted((a, b) => off(a) - off(b))
    .slice(0, NEAREST);
}
