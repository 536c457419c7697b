import type { Die, Press } from '../../machines/shop.js';
import { airRadius } from '../../metal/press-force.js';

const NEAREST = 2; // dies that are taken into account: those whose radius is near the one wanted

/** Furthest the press bends over a die, degrees: the punch that goes deepest, or the V, stops it. */
export const mostAngle = ({ punches }: Pick<Press, 'punches'>, die: Die): number =>
  180 - Math.max(die.angle, Math.min(...punches.map((p) => p.angle)));

/** The dies whose radius comes nearest to the one wanted, nearest first. */
export function diesFor({ dies }: Pick<Press, 'dies'>, insideRadius: number): readonly Die[] {
  const off = (d: Die) => Math.abs(Math.log(airRadius(d.opening) / Math.max(insideRadius, 0.1)));
  return dies.toSorted((a, b) => off(a) - off(b)).slice(0, NEAREST);
}
