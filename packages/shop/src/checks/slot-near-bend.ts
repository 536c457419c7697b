import type { Point, Segment } from '@tinwright/core';
import type { ShopCheck } from './check.js';
import { closest } from './geometry/closest.js';
import { tangentsOf } from './geometry/panels.js';
import { slotSides } from './geometry/slots.js';
import { limitCheck } from './limit-check.js';
import { bySources } from './profiles.js';

const PARALLEL = Math.cos((10 * Math.PI) / 180);

const SOURCES = {
  strict: { rule: '4T + R beside a bend that runs along the slot, 3T + R else', by: 'memory' },
  usual: { rule: '2.5T + R', by: 'design guides' },
} as const;

/** A slot so near a bend that bending spreads it. */
export const slotNearBend: ShopCheck = limitCheck({
  code: 'slot-near-bend',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: (subject, { profile }) =>
    subject.part.panels.flatMap(({ id }) => {
      const sides = slotSides(subject, id);
      return tangentsOf(subject.flat, id).flatMap(({ bend, line }) =>
        sides.map(({ edge, long }) => {
          const { distance, from } = closest(edge, line);
          const times = profile === 'usual' ? 2.5 : long && alongside(edge, line) ? 4 : 3;
          return {
            at: from,
            value: distance,
            limit: times * subject.sheet.thickness + bend.insideRadius,
            what: `in ${id} beside ${bend.id}`,
          };
        }),
      );
    }),
  message: ({ value, limit, what }, say) =>
    `a slot ${what} ends ${say.size(value)} from the bend, ${say.least(limit)} at least`,
  source: (_, __, { profile }) => bySources(profile, SOURCES),
  aim: ({ limit }, say) => `keep it ${say.least(limit)} from the bend`,
  remedy: () => 'cut it after bending',
});

function alongside(a: Segment, b: Segment): boolean {
  const way = ({ from, to }: Segment): Point => {
    const l = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return [(to[0] - from[0]) / l, (to[1] - from[1]) / l];
  };
  const [u, v] = [way(a), way(b)];
  return Math.abs(u[0] * v[0] + u[1] * v[1]) > PARALLEL;
}
