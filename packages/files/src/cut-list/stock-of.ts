import { type JobPlan, MATERIALS, type Material, type RackRows } from '@tinwright/core';
import type { Blank, Rack } from '@tinwright/cutting';
import { rackOf, sameMetal } from '@tinwright/cutting/internal';
import type { Shop } from '@tinwright/shop';
import { materialsOf } from './materials-of.js';

type Metal = Pick<Blank, 'material' | 'thickness'>;

const ANY_OFFCUT = 100; // mm each way: the least offcut of a shop that says nothing of it

/**
 * The sheets and offcuts that jobs bring along, else those of the shop for the metals asked for; null where nobody says
 * what there is. A rack file counts before both.
 * @throws JobError for sheets of a job that cannot be
 */
export function stockOf(plans: readonly JobPlan[], metals: readonly Metal[], shop: Shop | null): Rack | null {
  const known = materialsOf(plans);
  const own = plans.flatMap(({ job: { rack, units } }) =>
    rack === null ? [] : [rackOf(rack, units, ['stock'], known)],
  );
  if (own.length > 0) return together(own);
  return shop === null || shop.sheets.length === 0 ? null : shopRack(shop, metals, known);
}

/** The sheets a shop says it has: rows without a metal of every metal that is asked for. */
export function shopRack(
  { sheets, stock, units }: Shop,
  metals: readonly Metal[],
  known: readonly Material[] = MATERIALS,
): Rack {
  const nothing = { name: null, material: null, thickness: null, grain: null, price: null, trim: null };
  const rows = stock.length > 0 ? stock : sheets.map((size) => ({ ...nothing, size, count: null }));
  const firsts = metals.filter((m, i) => metals.findIndex((o) => sameMetal(o, m)) === i);
  const racks = firsts.map(({ material, thickness }) => {
    const own = rows
      .map((r) => ({ ...r, material: r.material ?? material, thickness: r.thickness ?? thickness }))
      .filter((r) => sameMetal(r, { material, thickness }));
    const least = [ANY_OFFCUT, ANY_OFFCUT] as const;
    const asked: RackRows = { sheets: own, offcuts: [], trim: null, kerf: 0, leastOffcut: least };
    return rackOf(asked, units, [], known);
  });
  if (racks.length > 0) return together(racks);
  return { sheets: [], kerf: 0, leastOffcut: { x: ANY_OFFCUT, y: ANY_OFFCUT } };
}

/** Racks of several jobs as one: the widest kerf, the least offcut of the first. */
function together(racks: readonly Rack[]): Rack {
  const [first] = racks as readonly [Rack];
  return {
    ...first,
    sheets: racks.flatMap((r) => r.sheets),
    kerf: Math.max(...racks.map((r) => r.kerf)),
  };
}
