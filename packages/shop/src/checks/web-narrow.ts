import { segments } from '@tinwright/core';
import type { Shop } from '../machines/shop.js';
import type { ShopCheck } from './check.js';
import { distance, nearestOn } from './geometry/closest.js';
import { type CutHole, holesOf } from './geometry/panels.js';
import { limitCheck, type Place } from './limit-check.js';

interface Web {
  readonly least: number;
  readonly source: string;
}

/** Least metal between two cuts by how they are made, mm. */
function webFor({ table, profile }: Shop, thickness: number): Web {
  if (table?.process === 'laser')
    return { least: thickness, source: 'T when laser-cut, by tuanthinh.net; better 1.5T' };
  if (table?.process === 'plasma')
    return {
      least: Math.max(1.5 * thickness, 2),
      source: '1.5T and 2 mm when plasma-cut, by newayprecision.com',
    };
  return profile === 'strict'
    ? { least: 2 * thickness, source: '2T when punched (profile strict), 1.5T (profile usual), from memory' }
    : {
        least: 1.5 * thickness,
        source: '1.5T when punched (profile usual), 2T (profile strict), from memory',
      };
}

/** Too little metal between a hole and another, or between a hole and the outline. Fasteners keep their own distances. */
export const webNarrow: ShopCheck = limitCheck({
  code: 'web-narrow',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: (subject, shop) => {
    const { least } = webFor(shop, subject.sheet.thickness);
    const edges = segments(subject.flat.outline);
    const holes = holesOf(subject);
    return holes.flatMap((hole, i): readonly Place[] => {
      const own = hole.joint === '';
      const others = holes.slice(i + 1).filter((o) => own || o.joint === '');
      const toEdge = Math.min(...edges.map((s) => distance(hole.at, nearestOn(s, hole.at)))) - hole.radius;
      const jointed = (o: CutHole) => !own || o.joint !== '';
      return [
        ...others.map((o) => ({
          at: hole.at,
          value: distance(hole.at, o.at) - hole.radius - o.radius,
          limit: least,
          what: `two holes in ${hole.panel}`,
          jointed: jointed(o),
        })),
        ...(own
          ? [{ at: hole.at, value: toEdge, limit: least, what: `a hole in ${hole.panel} and the edge` }]
          : []),
      ];
    });
  },
  message: ({ value, limit, what }, say) =>
    `${say.size(Math.max(0, value))} of metal between ${what}, ${say.least(limit)} at least`,
  source: (_, { sheet }, shop) => webFor(shop, sheet.thickness).source,
  aim: ({ limit }, say) => `leave ${say.least(limit)} between them`,
});
