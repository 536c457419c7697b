import { cite } from '@tinwright/core';
import type { ShopCheck } from './check.js';
import { facing } from './geometry/facing.js';
import { type CutHole, holesOf } from './geometry/panels.js';
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
      : drilledOf(subject).map(({ at, radius, panel, joint }) => ({
          at,
          value: 2 * radius,
          limit: table.smallestHole,
          names: [panel],
          jointed: joint !== '',
        })),
  values: (_, __, { table }) => ({ table: table?.name ?? '' }),
  source: () => [cite('shop-file')],
});

/** Round holes, which a drill can make too. */
const drilledOf = (subject: Parameters<typeof holesOf>[0]): readonly CutHole[] =>
  holesOf(subject).filter((h) => h.rim === null);

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
          .map(({ at, width }) => ({ at, value: width, limit: table.kerf, names: [] })),
  values: (_, __, { table }) => ({ table: table?.name ?? '' }),
  source: () => [cite('shop-file')],
});
