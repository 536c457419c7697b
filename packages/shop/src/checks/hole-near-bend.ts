import { cite } from '@tinwright/core';
import type { Profile } from '../machines/shop.js';
import type { ShopCheck } from './check.js';
import { distance, nearestOn } from './geometry/closest.js';
import { holesOf, tangentsOf } from './geometry/panels.js';
import { limitCheck, type Place } from './limit-check.js';
import { bySources } from './profiles.js';

const LARGE = 25; // mm of diameter, from which a hole is treated as a slot

/** Least distance from the edge of a hole to a bend's tangent line, mm. */
export function leastToBend(
  profile: Profile,
  thickness: number,
  insideRadius: number,
  diameter: number,
): number {
  const times = profile === 'strict' ? 3 : diameter >= LARGE ? 2.5 : 2;
  return times * thickness + insideRadius;
}

const SOURCES = {
  strict: cite('cautious-guides', { rule: '3T + R' }),
  usual: cite('metal-stamping-die.com, tuanthinh.net', { rule: '2T + R, 2.5T + R (#)', size: 25 }),
};

interface NearBend extends Place {
  readonly bend: string;
  readonly diameter: number;
}

/** A hole so near a bend that bending pulls it out of round. */
export const holeNearBend: ShopCheck = limitCheck<'hole-near-bend', NearBend>({
  code: 'hole-near-bend',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: (subject, shop) =>
    holesOf(subject).flatMap(({ at, radius, panel, joint }) =>
      tangentsOf(subject.flat, panel).map(({ bend, line }) => ({
        at,
        value: distance(at, nearestOn(line, at)) - radius,
        limit: leastToBend(shop.profile, subject.sheet.thickness, bend.insideRadius, 2 * radius),
        names: [panel],
        bend: bend.id,
        diameter: 2 * radius,
        jointed: joint !== '',
      })),
    ),
  values: ({ bend, diameter, jointed }) => ({ bend, diameter, of: jointed ? 'joint' : 'part' }),
  source: (_, __, { profile }) => bySources(profile, SOURCES),
});
