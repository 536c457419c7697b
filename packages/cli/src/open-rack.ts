import type { JobPlan, RackRows } from '@tinwright/core';
import type { Blank, Rack } from '@tinwright/cutting';
import type { Shop } from '@tinwright/shop';
import type { Host } from './console.js';
import type { ExitCode } from './failure.js';
import { withText } from './open-text.js';

/** A rack as it was read, and its file's bytes to know it again by; null where it comes from no file of its own. */
export interface OpenRack {
  readonly rack: Rack;
  readonly bytes: Uint8Array | null;
}

/** Who may say what stock there is. */
export interface StockAsked {
  /** A rack file: it alone counts then. */
  readonly rack?: string;
  readonly plans: readonly JobPlan[];
  readonly blanks: readonly Pick<Blank, 'material' | 'thickness'>[];
  readonly shop: Shop | null;
  readonly json: boolean;
}

/** The stock of a rack file, else of the jobs themselves, else of the shop; null where nobody says. */
export async function stockKnown(
  host: Host,
  { rack, plans, blanks, shop, json }: StockAsked,
): Promise<OpenRack | { readonly exit: ExitCode } | null> {
  if (rack !== undefined) return openRack(host, rack, json);
  const own = await racksOf(plans);
  if (own.length > 0) return { rack: together(own), bytes: null };
  return shop === null || shop.sheets.length === 0
    ? null
    : { rack: await shopRack(shop, blanks), bytes: null };
}

/** The rack in a file; problems are printed with their places. */
export async function openRack(
  host: Host,
  file: string,
  json: boolean,
): Promise<OpenRack | { readonly exit: ExitCode }> {
  const { readRack } = await import('@tinwright/cutting');
  const opened = await withText(host, file, 'rack', json, (data, bytes) => ({ rack: readRack(data), bytes }));
  return 'exit' in opened ? opened : opened.answer;
}

async function racksOf(plans: readonly JobPlan[]): Promise<readonly Rack[]> {
  const named = plans.flatMap(({ job }) => (job.rack === null ? [] : [{ rows: job.rack, units: job.units }]));
  if (named.length === 0) return [];
  const { rackOf } = await import('@tinwright/cutting/internal');
  return named.map(({ rows, units }) => rackOf(rows, units, ['stock']));
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

/** The sheets a shop says it has: rows without a metal of every metal that is asked for. */
export async function shopRack({ sheets, stock, units }: Shop, metals: StockAsked['blanks']): Promise<Rack> {
  const { rackOf, sameMetal } = await import('@tinwright/cutting/internal');
  const nothing = { name: null, material: null, thickness: null, grain: null, price: null, trim: null };
  const rows = stock.length > 0 ? stock : sheets.map((size) => ({ ...nothing, size, count: null }));
  const firsts = metals.filter((m, i) => metals.findIndex((o) => sameMetal(o, m)) === i);
  const racks = firsts.map(({ material, thickness }) => {
    const own = rows
      .map((r) => ({ ...r, material: r.material ?? material, thickness: r.thickness ?? thickness }))
      .filter((r) => sameMetal(r, { material, thickness }));
    const asked: RackRows = { sheets: own, offcuts: [], trim: null, kerf: 0, leastOffcut: [100, 100] };
    return rackOf(asked, units, []);
  });
  return racks.length === 0 ? { sheets: [], kerf: 0, leastOffcut: { x: 100, y: 100 } } : together(racks);
}
