import type { ShopCheck } from './check.js';
import { facing } from './geometry/facing.js';
import { holesOf } from './geometry/panels.js';
import { limitCheck } from './limit-check.js';

/** Holes smaller than the cutting table can cut round. */
export const holeUnderTable: ShopCheck = limitCheck({
  code: 'hole-under-table',
  severity: 'note',
  unit: 'mm',
  bound: 'least',
  places: (subject, { table }) =>
    table === null
      ? []
      : holesOf(subject).map(({ at, radius, panel, joint }) => ({
          at,
          value: 2 * radius,
          limit: table.smallestHole,
          what: `in ${panel}`,
          jointed: joint !== '',
        })),
  message: ({ value, limit, what }, say, _, { table }) =>
    `the ${table?.name} cuts holes of ${say.least(limit)} and larger, there is one of ${say.size(value)} ${what}`,
  source: () => 'shop file',
  aim: () => 'let the table mark the centre and drill it',
});

/** Gaps in the outline narrower than the cutting table's kerf. */
export const gapUnderKerf: ShopCheck = limitCheck({
  code: 'gap-under-kerf',
  severity: 'note',
  unit: 'mm',
  bound: 'least',
  places: ({ flat }, { table }) =>
    table === null
      ? []
      : facing(flat.outline, table.kerf, 0)
          .filter((f) => f.across === 'gap')
          .map(({ at, width }) => ({ at, value: width, limit: table.kerf, what: 'gap' })),
  message: ({ value, limit, what }, say, _, { table }) =>
    `a ${what} of ${say.size(value)} in the outline, the kerf of the ${table?.name} is ${say.least(limit)}`,
  source: () => 'shop file',
  aim: ({ limit }, say) => `make it ${say.least(limit)} wide`,
  remedy: () => 'saw or snip it by hand',
});
