import type { Die, Press, Punch } from '../machines/shop.js';
import { airRadius } from '../metal/press-force.js';

const NEAREST = 2; // dies that are taken into account: those whose radius is near the one wanted

/** Furthest a punch bends over a die, degrees: the slimmer of both angles stops it. */
export const mostAngle = (punch: Punch, die: Die): number => 180 - Math.max(die.angle, punch.angle);

/** Furthest any punch of a press bends over a die, degrees. */
export const mostOver = ({ punches }: Pick<Press, 'punches'>, die: Die): number =>
  Math.max(...punches.map((p) => mostAngle(p, die)));

/** Of the dies over which a press bends so far, those whose radius comes nearest to the one wanted, nearest first. */
export function diesFor(
  press: Pick<Press, 'punches' | 'dies'>,
  insideRadius: number,
  through: number,
): readonly Die[] {
  const off = (d: Die) => Math.abs(Math.log(airRadius(d.opening) / Math.max(insideRadius, 0.1)));
  return press.dies
    .filter((d) => through <= mostOver(press, d) + 1e-9)
    .toSorted((a, b) => off(a) - off(b))
    .slice(0, NEAREST);
}
