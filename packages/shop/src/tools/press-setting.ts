import type { Die, Press, Punch } from '../machines/shop.js';
import { airRadius } from '../metal/press-force.js';

/** Thicknesses that the opening of a V has as a rule: over less the sheet is marked and the force runs away. Common practice, no source. */
export const PRACTICE_LEAST = 5;
/** Over less than so many thicknesses nothing is planned: the force is twice the usual one. Judgement. */
export const LEAST_OPENING = 4;
/** Thicknesses of the usual opening; the trade's rule of thumb, from memory. */
export const USUAL_OPENING = 8;

const NEAREST = 2; // dies that are taken first: those whose radius is nearest to the one wanted

/** Dies of a rack that a search takes: those that make a radius nearest, or every one that can be used. */
export type DieChoice = 'near' | 'all';

/** Furthest a punch bends over a die, degrees: the slimmer of both angles stops it. */
export const mostAngle = (punch: Punch, die: Die): number => 180 - Math.max(die.angle, punch.angle);

/** Furthest any punch of a press bends over a die, degrees. */
export const mostOver = ({ punches }: Pick<Press, 'punches'>, die: Die): number =>
  Math.max(...punches.map((p) => mostAngle(p, die)));

/** Thickness and inside radius, mm. */
interface Bent {
  readonly thickness: number;
  readonly insideRadius: number;
}

/**
 * Dies over which a press can bend a sheet so far, best first: those as wide as practice asks for, then the radius nearest to the
 * one wanted, then an opening nearest to the usual one. @param through degrees
 */
export function usableDies(
  press: Pick<Press, 'punches' | 'dies'>,
  { thickness, insideRadius }: Bent,
  through: number,
): readonly Die[] {
  return nearestFirst(
    press.dies.filter((d) => isAsWide(d, LEAST_OPENING * thickness) && through <= mostOver(press, d) + 1e-9),
    { thickness, insideRadius },
  );
}

/** Dies in that order, whatever is bent over them. */
export function nearestFirst(dies: readonly Die[], { thickness, insideRadius }: Bent): readonly Die[] {
  const off = (d: Die) => Math.abs(Math.log(airRadius(d.opening) / Math.max(insideRadius, 0.1)));
  const unusual = (d: Die) => Math.abs(d.opening - USUAL_OPENING * thickness);
  return dies.toSorted(
    (a, b) =>
      Number(isNarrow(a, thickness)) - Number(isNarrow(b, thickness)) ||
      off(a) - off(b) ||
      unusual(a) - unusual(b),
  );
}

/** Those that are taken first: as wide as practice asks for, and their radius nearest to the one wanted. */
export const diesFor = (
  press: Pick<Press, 'punches' | 'dies'>,
  bent: Bent,
  through: number,
): readonly Die[] =>
  usableDies(press, bent, through)
    .slice(0, NEAREST)
    .filter((d) => !isNarrow(d, bent.thickness));

/** True for a rack that may hold more dies for a sheet than those that are taken first. @param thickness mm */
export const hasFurther = ({ dies }: Pick<Press, 'dies'>, thickness: number): boolean =>
  dies.length > NEAREST || dies.some((d) => isNarrow(d, thickness));

const isAsWide = ({ opening }: Die, least: number) => opening >= least - 1e-9;

/** Less than practice asks for. */
const isNarrow = (die: Die, thickness: number): boolean => !isAsWide(die, PRACTICE_LEAST * thickness);
