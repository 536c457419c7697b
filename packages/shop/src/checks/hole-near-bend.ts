import { cite } from '@tinwright/core';
import type { Profile } from '../machines/shop.js';
import type { ShopCheck } from './check.js';
import { holesOf, metalTo, tangentsOf } from './geometry/panels.js';
import { type LimitPlace, limitCheck } from './limit-check.js';
import { bySources } from './profiles.js';

const LARGE = 25; // mm of diameter, from which a hole is treated as a slot

/** Least distance from the edge of a hole to a bend's tangent line, mm. */
function leastToBend(profile: Profile, thickness: number, insideRadius: number, diameter: number): number {
  const times = profile === 'strict' ? 3 : diameter >= LARGE ? 2.5 : 2;
  return times * thickness + insideRadius;
}

const SOURCES = {
  strict: cite('cautious-guides', { rule: '3T + R' }),
  usual: cite('metal-stamping-die.com, tuanthinh.net', { rule: '2T + R, 2.5T + R (#)', size: 25 }),
};

interface NearBend extends LimitPlace {
  readonly bend: string;
  readonly diameter: number | null;
}

/** A hole so near a bend that bending pulls it out of round; a cut-out counts as a slot. */
export const holeNearBend: ShopCheck = limitCheck<'hole-near-bend', NearBend>({
  code: 'hole-near-bend',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: (subject, shop) =>
    holesOf(subject).flatMap((hole) =>
      tangentsOf(subject.flat, hole.panel).map(({ bend, line }) => {
        const diameter = hole.rim === null ? 2 * hole.radius : null;
        return {
          at: hole.at,
          value: metalTo(hole, line),
          limit: leastToBend(shop.profile, subject.sheet.thickness, bend.insideRadius, diameter ?? LARGE),
          names: [hole.panel],
          bend: bend.id,
          diameter,
          jointed: hole.joint !== '',
        };
      }),
    ),
  values: ({ bend, diameter, jointed }) => ({ bend, diameter, of: jointed ? 'joint' : 'part' }),
  source: (_, __, { profile }) => bySources(profile, SOURCES),
});
