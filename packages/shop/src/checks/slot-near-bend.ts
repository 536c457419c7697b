import { cite, type Point, type Segment } from '@tinwright/core';
import { closest } from '@tinwright/core/internal';
import type { ShopCheck } from './check.js';
import { tangentsOf } from './geometry/panels.js';
import { slotSides } from './geometry/slots.js';
import { type LimitPlace, limitCheck } from './limit-check.js';
import { bySources } from './profiles.js';

const PARALLEL = Math.cos((10 * Math.PI) / 180);

const SOURCES = {
  strict: cite(null, { rule: '4T + R, 3T + R', basis: 'memory' }),
  usual: cite('design-guides', { rule: '2.5T + R' }),
};

interface Beside extends LimitPlace {
  readonly bend: string;
}

/** A slot so near a bend that bending spreads it. */
export const slotNearBend: ShopCheck = limitCheck<'slot-near-bend', Beside>({
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
            names: [id],
            bend: bend.id,
          };
        }),
      );
    }),
  values: ({ bend }) => ({ bend }),
  source: (_, __, { profile }) => bySources(profile, SOURCES),
});

function alongside(a: Segment, b: Segment): boolean {
  const way = ({ from, to }: Segment): Point => {
    const l = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return [(to[0] - from[0]) / l, (to[1] - from[1]) / l];
  };
  const [u, v] = [way(a), way(b)];
  return Math.abs(u[0] * v[0] + u[1] * v[1]) > PARALLEL;
}
