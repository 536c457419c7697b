import { cite } from '@tinwright/core';
import { distance, nearestOn } from '@tinwright/core/internal';
import type { ShopCheck } from './check.js';
import { tangentsOf } from './geometry/panels.js';
import { type LimitPlace, limitCheck } from './limit-check.js';

const CLEARANCE = 1; // mm at least, 1 to 2 is usual

interface Weld extends LimitPlace {
  readonly bend: string;
}

/** A spot weld so near a bend that the shop's electrode meets the wall there. */
export const weldElectrode: ShopCheck = limitCheck<'weld-electrode', Weld>({
  code: 'weld-electrode',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: ({ flat }, { spotWelder }) =>
    spotWelder === null
      ? []
      : flat.marks
          .filter((m) => m.kind === 'spot-weld')
          .flatMap(({ at, panel }) =>
            tangentsOf(flat, panel)
              // a hem lies flat
              .filter(({ bend }) => bend.hem === null)
              .map(({ bend, line }) => ({
                at,
                value: distance(at, nearestOn(line, at)),
                limit: spotWelder.electrode / 2 + CLEARANCE,
                names: [panel],
                bend: bend.id,
                jointed: true,
              })),
          ),
  values: ({ value, bend }) => ({
    bend,
    electrode: value > CLEARANCE ? 2 * (value - CLEARANCE) : null,
  }),
  source: () => [cite('shop-file', { rule: '½ D(electrode) + #', size: 1, basis: 'derived' })],
});
