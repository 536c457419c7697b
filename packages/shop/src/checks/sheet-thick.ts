import { thicknessLimit } from '../machines/capacity.js';
import type { Shop } from '../machines/shop.js';
import type { ShopCheck, Subject } from './check.js';
import { lengthOf, middleOf } from './geometry/panels.js';
import { limitCheck, type Place } from './limit-check.js';
import { leafThickness } from './machine/leaf.js';
import { leastForce } from './machine/press.js';
import { viseTakes } from './machine/vise.js';

interface Thick extends Place {
  readonly machine: string;
  readonly source: string;
  /** Thickness that leaves nothing to say. */
  readonly passes: number;
}

/** Sheet thicker than the brake bends, or than the shear cuts where nothing else does. */
export const sheetThick: ShopCheck = limitCheck<Thick>({
  code: 'sheet-thick',
  severity: 'error',
  unit: 'mm',
  bound: 'most',
  places: (subject, shop) => [...bending(subject, shop), ...cutting(subject, shop)],
  message: ({ value, limit, machine }, say, { material }) =>
    `${material.title} of ${say.size(value)}, the ${machine} takes ${say.most(limit)}`,
  source: ({ source }) => source,
  aim: ({ passes }, say) => `take sheet of ${say.most(passes)} or thinner`,
});

function bending(subject: Subject, shop: Shop): readonly Thick[] {
  const { sheet, material, flat } = subject;
  const { brake, profile } = shop;
  const bends = flat.bends.filter((b) => b.hem !== 'wired');
  const [longest] = bends.toSorted((a, b) => lengthOf(b) - lengthOf(a));
  if (brake === null || longest === undefined || pressed(subject, shop)) return [];
  const listed = leafThickness(brake, material, 'usual');
  const asked = leafThickness(brake, material, profile);
  const over = !fits(sheet.thickness, listed.value);
  const byHand = bends.every((b) => viseTakes(subject, shop, b));
  const severity = byHand ? 'note' : over ? 'error' : 'warning';
  const limit = over ? listed : asked;
  if (fits(sheet.thickness, limit.value)) return [];
  return [
    {
      at: middleOf(longest),
      value: sheet.thickness,
      limit: limit.value,
      what: 'bending',
      machine: brake.name,
      severity,
      source: asked.source,
      passes: asked.value,
    },
  ];
}

/** True when a press has the force for every bend of the part. */
function pressed({ sheet, material, flat }: Subject, { press, profile }: Shop): boolean {
  return (
    press !== null &&
    flat.bends.every(
      (b) =>
        leastForce(
          press,
          { thickness: sheet.thickness, insideRadius: b.insideRadius, length: lengthOf(b) },
          material,
          profile,
        ) <= press.force,
    )
  );
}

function cutting({ sheet, material, flat }: Subject, { shear, table }: Shop): readonly Thick[] {
  if (shear === null || table !== null) return [];
  const { thickness, source } = thicknessLimit(shear.capacity, material);
  if (fits(sheet.thickness, thickness)) return [];
  return [
    {
      at: flat.blank.max,
      value: sheet.thickness,
      limit: thickness,
      what: 'cutting',
      machine: shear.name,
      source,
      passes: thickness,
    },
  ];
}

/** A thousandth more is rounding of a gauge. */
const fits = (thickness: number, most: number): boolean => thickness <= most * 1.001;
