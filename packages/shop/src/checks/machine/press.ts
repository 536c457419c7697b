import { type Material, plainNumber } from '@tinwright/core';
import type { Die, Press, Profile } from '../../machines/shop.js';
import {
  airRadius,
  bendForce,
  FORCE_CONSTANTS,
  forceTensile,
  leastVFlange,
} from '../../metal/press-force.js';
import type { Sourced } from './leaf.js';

const NEAREST = 2; // dies that are taken into account: those whose radius is near the one wanted

/** Furthest the press bends over a die, degrees: the punch that goes deepest, or the V, stops it. */
export const mostAngle = ({ punches }: Pick<Press, 'punches'>, die: Die): number =>
  180 - Math.max(die.angle, Math.min(...punches.map((p) => p.angle)));

/** The dies whose radius comes nearest to the one wanted, nearest first. */
export function diesFor({ dies }: Pick<Press, 'dies'>, insideRadius: number): readonly Die[] {
  const off = (d: Die) => Math.abs(Math.log(airRadius(d.opening) / Math.max(insideRadius, 0.1)));
  return dies.toSorted((a, b) => off(a) - off(b)).slice(0, NEAREST);
}

/**
 * Shortest flange over the narrower of the dies that fit, outside, mm. A hem or a fold past what the press bends takes
 * what the furthest stroke does.
 */
export function leastPressFlange(
  press: Press,
  bend: { readonly thickness: number; readonly insideRadius: number; readonly angle: number },
  profile: Profile,
): Sourced {
  const through = Math.min(bend.angle, Math.max(...press.dies.map((d) => mostAngle(press, d))));
  const dies = press.dies.filter((d) => mostAngle(press, d) >= through);
  const opening = Math.min(...diesFor({ dies }, bend.insideRadius).map((d) => d.opening));
  const edge = leastVFlange(opening, through);
  const land = opening / 2 + 2 + bend.thickness;
  const by = `V of ${opening} mm`;
  const furthest = through < bend.angle ? `, A = ${plainNumber(through, 1)} deg, the furthest it bends` : '';
  return profile === 'strict' && land > edge
    ? {
        value: land,
        source: `V/2 + 2 mm + T over a ${by} by fabricators' pages (profile strict); V / (2 cos(A/2)) derived (profile usual)`,
      }
    : { value: edge, source: `V / (2 cos(A/2)) over a ${by}${furthest}, derived; 0.7 V by air-bend charts` };
}

/** Force a bend takes on the die that needs least, kN. */
export function leastForce(
  press: Press,
  bend: { readonly thickness: number; readonly insideRadius: number; readonly length: number },
  material: Material,
  profile: Profile,
): number {
  const opening = Math.max(...diesFor(press, bend.insideRadius).map((d) => d.opening));
  return bendForce(
    FORCE_CONSTANTS[profile].value,
    forceTensile(material),
    bend.length,
    bend.thickness,
    opening,
  );
}
