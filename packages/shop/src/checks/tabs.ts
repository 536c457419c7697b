import { cite } from '@tinwright/core';
import type { ShopCheck } from './check.js';
import { type Facing, facing } from './geometry/facing.js';
import { type LimitPlace, limitCheck } from './limit-check.js';

const LEAST = 3.2; // mm
const LONG = 5; // widths

const least = (thickness: number): number => Math.max(LEAST, 2 * thickness);

/** A tab or strip of metal so narrow that it bends or breaks in handling. */
export const tabNarrow: ShopCheck = limitCheck({
  code: 'tab-narrow',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: ({ flat, sheet }) =>
    facing(flat.outline, least(sheet.thickness), 0)
      .filter((f) => f.across === 'metal')
      .map(({ at, width }) => ({ at, value: width, limit: least(sheet.thickness), names: [] })),
  values: () => ({}),
  source: () => [cite('fabricator', { rule: '2T, #', size: 3.2 })],
});

interface Tab extends LimitPlace {
  readonly long: number;
}

/** A thin tab much longer than wide. */
export const tabLong: ShopCheck = limitCheck<'tab-long', Tab>({
  code: 'tab-long',
  severity: 'note',
  unit: 'mm',
  bound: 'least',
  places: ({ flat, sheet }) =>
    facing(flat.outline, 0, 1 / LONG)
      // from five times the least width on it is no thin tab
      .filter((f) => isTab(f) && f.width < LONG * least(sheet.thickness))
      .map(({ at, width, length }) => ({
        at,
        value: width,
        limit: length / LONG,
        names: [],
        long: length,
      })),
  values: ({ long }) => ({ long, most: LONG }),
  source: () => [cite('fabricator', { rule: 'L / 5' }), cite(null, { basis: 'judgement' })],
});

/** Joined at one end only: the outline goes round the other in a short way. */
const isTab = ({ across, width, round: [one, other] }: Facing): boolean =>
  across === 'metal' && one < 2 * width !== other < 2 * width;
