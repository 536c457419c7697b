import type { ShopCheck } from './check.js';
import { lengthOf, middleOf } from './geometry/panels.js';
import { limitCheck, type Place } from './limit-check.js';

interface Long extends Place {
  readonly machine: string;
}

/** A bend longer than every brake in the shop. */
export const bendLong: ShopCheck = limitCheck<Long>({
  code: 'bend-long',
  severity: 'error',
  unit: 'mm',
  bound: 'most',
  places: ({ flat }, { brake, press }) => {
    const machines = [brake, press].flatMap((m) => (m === null ? [] : [m]));
    const longest = machines.toSorted((a, b) => b.length - a.length)[0];
    if (longest === undefined) return [];
    return flat.bends
      .filter((b) => b.hem !== 'wired')
      .map((bend) => ({
        at: middleOf(bend),
        value: lengthOf(bend),
        limit: longest.length,
        what: bend.id,
        machine: longest.name,
      }));
  },
  message: ({ value, limit, what, machine }, say) =>
    `${what} is ${say.size(value)} long, the ${machine} bends ${say.most(limit)}`,
  source: () => 'shop file',
  aim: ({ limit }, say) => `make it ${say.most(limit)} or shorter`,
  remedy: () => 'join it from two parts',
});
