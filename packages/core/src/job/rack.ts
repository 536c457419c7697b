import { within } from '../errors/problem.js';
import type { MetalRow, RackRows } from '../schema/rack-rows.js';
import type { Material } from '../stock/materials.js';
import type { JobStockData } from './schema.js';
import { thicknessOf } from './sheet.js';
import type { Tables } from './tables.js';

/** Sheets and offcuts of a job, of its own metal where a row names none; null where it names no sheets or offcuts. */
export function jobRack(stock: JobStockData, { materials }: Tables): RackRows | null {
  const { sheets, offcuts, trim, kerf, leastOffcut } = stock;
  if (sheets.length === 0 && offcuts.length === 0) return null;
  const material = materials.find((m) => m.name === stock.material) as Material;
  const thick = () => within(['stock'], () => thicknessOf(stock, material));
  const ofJob = <R extends MetalRow>(row: R): R => ({
    ...row,
    material: row.material ?? stock.material,
    thickness: row.thickness ?? thick(),
  });
  return { sheets: sheets.map(ofJob), offcuts: offcuts.map(ofJob), trim, kerf, leastOffcut };
}
