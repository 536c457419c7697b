import type { ShearPlan } from '@tinwright/cutting';

/** Number of decimals of a coordinate: a millionth of a millimetre. */
const DIGITS = 6;

const rounded = (value: number): number => Number(value.toFixed(DIGITS));

/** Shear plans for programs: an array with every sheet, its parts, its cuts as a tree and its offcuts. mm */
export function shearJson(plans: readonly ShearPlan[]): string {
  const list = plans.flatMap(({ material, thickness, kerf, sheets }) =>
    sheets.map(({ stock, parts, cuts, offcuts }) => ({
      material,
      thickness,
      sheetName: stock.name,
      sheet: { x: stock.x, y: stock.y },
      kerf,
      trim: {
        left: stock.trim.west,
        right: stock.trim.east,
        bottom: stock.trim.south,
        top: stock.trim.north,
      },
      parts: parts.map(({ id, x, y, w, h }) => ({ id, x, y, w, h })),
      cuts: cuts ?? [],
      offcuts: offcuts.map(({ x, y, w, h }) => ({ x, y, w, h })),
    })),
  );
  const plain = (_: string, value: unknown) => (typeof value === 'number' ? rounded(value) : value);
  return `${JSON.stringify(list, plain, 1)}\n`;
}
