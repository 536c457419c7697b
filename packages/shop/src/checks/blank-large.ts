import { cite, type Point } from '@tinwright/core';
import type { ShopCheck } from './check.js';
import { limitCheck } from './limit-check.js';

interface Excess {
  readonly value: number;
  readonly limit: number;
}

/** The side of a blank that leaves least room on a sheet or bed, laid the better way round. mm */
export function tightest([x, y]: Point, [length, width]: Point): Excess {
  const long = { value: Math.max(x, y), limit: Math.max(length, width) };
  const short = { value: Math.min(x, y), limit: Math.min(length, width) };
  return long.limit - long.value < short.limit - short.value ? long : short;
}

/** A blank larger than any sheet in the rack. */
export const blankLarge: ShopCheck = limitCheck({
  code: 'blank-large',
  severity: 'error',
  unit: 'mm',
  bound: 'most',
  places: ({ flat }, { sheets }) => {
    const [best] = sheets
      .map((s) => tightest(flat.blank.max, s as Point))
      .toSorted((a, b) => b.limit - b.value - (a.limit - a.value));
    return best === undefined ? [] : [{ ...best, at: flat.blank.max, names: [] }];
  },
  values: (_, { flat: { blank } }) => ({ x: blank.max[0], y: blank.max[1] }),
  source: () => [cite('shop-file')],
});
