import { type CutWork, cutTotals, sheetArea } from './cut-list.js';

/** What minutes are, wherever they stand. */
const ESTIMATE = 'estimates by the rates of the shop file, or by judgement where it gives none';

/** The cut list as the manifest carries it. Lengths mm, mass kg, shares 0 to 1. */
export function cutListEntry(work: CutWork): object {
  const { plans, parts, fasteners } = work;
  const known = new Map(parts.map((p) => [p.part, p]));
  const sheets = plans.flatMap(({ material, thickness, sheets: own }) =>
    own.map((sheet) => ({ ...sheet, material, thickness })),
  );
  const { minutes, ...totals } = cutTotals(work);
  return {
    ...totals,
    minutes: { ...minutes, basis: ESTIMATE },
    sheetsTaken: sheets.map((sheet, i) => ({
      number: i + 1,
      name: sheet.stock.name,
      origin: sheet.stock.origin,
      material: sheet.material,
      thickness: sheet.thickness,
      x: sheet.stock.x,
      y: sheet.stock.y,
      used: sheet.parts.reduce((sum, b) => sum + (known.get(b.part)?.area ?? 0), 0) / sheetArea(sheet),
      price: sheet.stock.price,
      offcuts: sheet.offcuts.map(({ w, h }) => ({ x: w, y: h })),
    })),
    blanksCut: sheets.flatMap((sheet, i) =>
      sheet.parts.map((b) => ({
        id: b.id,
        part: b.part,
        x: b.turned ? b.h : b.w,
        y: b.turned ? b.w : b.h,
        sheet: i + 1,
        turned: b.turned,
        mass: known.get(b.part)?.mass ?? 0,
      })),
    ),
    missing: plans.flatMap((p) => p.missing),
    fastenersBy: fasteners,
  };
}
