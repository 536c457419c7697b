import { cite, type Point } from '@tinwright/core';
import { thicknessLimit } from '../machines/capacity.js';
import { tightest } from './blank-large.js';
import type { ShopCheck } from './check.js';
import { type LimitPlace, limitCheck } from './limit-check.js';

interface Cut extends LimitPlace {
  readonly machine: string;
}

/** A blank too large for everything in the shop that could cut it: table, or shear along its longest side. */
export const cutLarge: ShopCheck = limitCheck<'cut-large', Cut>({
  code: 'cut-large',
  severity: 'warning',
  unit: 'mm',
  bound: 'most',
  places: ({ flat, sheet, material }, { table, shear }) => {
    const longest = Math.max(...flat.blank.max);
    const sheared =
      shear !== null && sheet.thickness <= thicknessLimit(shear.capacity, material).thickness * 1.001;
    const ways = [
      ...(table === null
        ? []
        : [{ ...tightest(flat.blank.max, [table.length, table.width] as Point), machine: table.name }]),
      ...(sheared ? [{ value: longest, limit: shear.length, machine: shear.name }] : []),
    ].toSorted((a, b) => b.limit - b.value - (a.limit - a.value));
    return ways.slice(0, 1).map((w) => ({ ...w, at: flat.blank.max, names: [] }));
  },
  values: ({ machine }) => ({ machine }),
  source: () => [cite('shop-file')],
});
