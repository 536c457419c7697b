import type { Source } from '@tinwright/core';
import { thicknessLimit } from '../machines/capacity.js';
import type { Shop } from '../machines/shop.js';
import type { ShopCheck, ShopSubject } from './check.js';
import { fingerThickness } from './finger-thickness.js';
import { lengthOf, middleOf } from './geometry/panels.js';
import { type LimitPlace, limitCheck } from './limit-check.js';

interface Thick extends LimitPlace {
  readonly machine: string;
  readonly source: readonly Source[];
}

/** Sheet thicker than a manual gives for box fingers, or than the shear cuts where nothing else does. */
export const sheetThick: ShopCheck = limitCheck<'sheet-thick', Thick>({
  code: 'sheet-thick',
  severity: 'error',
  unit: 'mm',
  bound: 'most',
  places: (subject, shop) => [...bending(subject, shop), ...cutting(subject, shop)],
  values: ({ machine }, { material }) => ({ machine, material: material.name }),
  source: ({ source }) => source,
});

/** What the brake's own list does not allow is left to the order of bends. */
function bending(
  { sheet, material, flat }: ShopSubject,
  { brake, brakes, press, profile }: Shop,
): readonly Thick[] {
  const bends = flat.bends.filter((b) => b.hem !== 'wired' && b.hem !== 'curl');
  const [longest] = bends.toSorted((a, b) => lengthOf(b) - lengthOf(a));
  // another brake may take what the fingers of the first do not
  if (brake === null || brakes.length > 0 || press !== null || profile === 'usual' || longest === undefined)
    return [];
  const limit = fingerThickness(brake, material);
  const listed = thicknessLimit(brake.capacity, material).thickness;
  if (fits(sheet.thickness, limit.value) || !fits(sheet.thickness, listed)) return [];
  return [
    {
      at: middleOf(longest),
      value: sheet.thickness,
      limit: limit.value,
      names: [],
      machine: brake.name,
      severity: 'warning',
      source: limit.source,
    },
  ];
}

function cutting({ sheet, material, flat }: ShopSubject, { shear, table }: Shop): readonly Thick[] {
  if (shear === null || table !== null) return [];
  const { thickness, source } = thicknessLimit(shear.capacity, material);
  if (fits(sheet.thickness, thickness)) return [];
  return [
    {
      at: flat.blank.max,
      value: sheet.thickness,
      limit: thickness,
      names: [],
      machine: shear.name,
      source,
    },
  ];
}

/** A thousandth more is rounding of a gauge. */
const fits = (thickness: number, most: number): boolean => thickness <= most * 1.001;
