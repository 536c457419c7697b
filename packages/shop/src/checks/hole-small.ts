import { cite } from '@tinwright/core';
import type { ShopCheck } from './check.js';
import { holesOf } from './geometry/panels.js';
import { isHard } from './hard.js';
import { limitCheck } from './limit-check.js';

/** A hole narrower than the sheet is thick. */
export const holeSmall: ShopCheck = limitCheck({
  code: 'hole-small',
  severity: 'warning',
  unit: 'mm',
  bound: 'least',
  places: (subject) =>
    holesOf(subject).map(({ at, radius, panel, joint }) => ({
      at,
      value: 2 * radius,
      limit: (isHard(subject.material) ? 2 : 1) * subject.sheet.thickness,
      names: [panel],
      jointed: joint !== '',
    })),
  values: (_, { material }) => ({ material: material.name }),
  source: () => [cite('fabricators', { rule: 'T, 2T' }), cite(null, { basis: 'judgement' })],
});
