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
  strict: { rule: '3T + R', by: 'cautious design guides' },
  usual: {
    rule: '2T + R, 2.5T + R from 25 mm',
    by: 'metal-stamping-die.com and tuanthinh.net design guides',
  },
} as const;

interface NearBend extends Place {
  readonly bend: string;
  readonly diameter: number;
}

/** A hole so near a bend that bending pulls it out of round. */
export const holeNearBend: ShopCheck = limitCheck<NearBend>({
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
        what: `in ${panel}`,
        bend: bend.id,
        diameter: 2 * radius,
        jointed: joint !== '',
      })),
    ),
  message: ({ value, limit, what, bend, diameter, jointed }, say) => {
    const hole = `${jointed ? "a fastener's hole" : 'a hole'} of ${say.size(diameter)} ${what}`;
    const found = value > 0 ? `ends ${say.size(value)} from` : 'runs into';
    return `${hole} ${found} the bend ${bend}, ${say.least(limit)} at least`;
  },
  source: (_, __, { profile }) => bySources(profile, SOURCES),
  aim: ({ limit }, say) => `keep its edge ${say.least(limit)} from the bend`,
  remedy: () => 'drill it after bending',
});
