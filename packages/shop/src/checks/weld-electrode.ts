import type { ShopCheck } from './check.js';
import { distance, nearestOn } from './geometry/closest.js';
import { tangentsOf } from './geometry/panels.js';
import { limitCheck, type Place } from './limit-check.js';

const CLEARANCE = 1; // mm at least, 1 to 2 is usual

interface Weld extends Place {
  readonly bend: string;
}

/** A spot weld so near a bend that the shop's electrode meets the wall there. */
export const weldElectrode: ShopCheck = limitCheck<Weld>({
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
                what: `in ${panel}`,
                bend: bend.id,
                jointed: true,
              })),
          ),
  message: ({ value, limit, what, bend }, say) =>
    `a spot weld ${what} is ${say.size(value)} from the bend ${bend}, ${say.least(limit)} at least for the electrode`,
  source: () => 'half the electrode in the shop file and 1 mm beside the bend, 1 to 2 is usual, derived',
  aim: ({ value, limit }, say) =>
    value > CLEARANCE
      ? `take electrodes of ${say.most(2 * (value - CLEARANCE))} or thinner`
      : `leave ${say.least(limit)} beside the bend`,
});
