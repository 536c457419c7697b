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
      what: `in ${panel}`,
      jointed: joint !== '',
    })),
  message: ({ value, limit, what }, say, { material }) =>
    `a hole of ${say.size(value)} ${what}, ${say.least(limit)} at least in ${material.title} of this thickness`,
  source: () =>
    "diameter at least T, 2T in hard metal, by a fabricators' page; which metals are hard is judgement",
  aim: ({ limit }, say) => `make it ${say.least(limit)} or larger`,
  remedy: () => 'drill it',
});
