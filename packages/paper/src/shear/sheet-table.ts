import { plainNumber } from '@tinwright/core/internal';
import type { ShearPlan } from '@tinwright/cutting';
import type { ShearWords } from '@tinwright/words/internal';
import type { Dims } from '../page/dims.js';
import type { Flowing } from '../page/flow.js';
import { type TypeSetting, tableFlow } from '../page/table.js';

const percent = (share: number, floor: 'floor' | 'nearest', { own }: Dims): string =>
  own(`${plainNumber(floor === 'floor' ? Math.floor(share * 1000) / 10 : share * 100, 1)}\u00A0%`);

/** The sheets of a plan, how much of each is used, what is missing, and how good the plan is known to be. */
export function sheetTable(
  { sheets, missing, cost, bound }: ShearPlan,
  first: number,
  words: ShearWords,
  dims: Dims,
  setting: TypeSetting,
): Flowing {
  const { sheetColumns: c } = words;
  const size = (w: number, h: number) => `${dims.text(w)}\u00A0×\u00A0${dims.text(h)}`;
  const known = cost <= bound * (1 + 1e-6) ? words.proved : words.gap(percent(bound / cost, 'floor', dims));
  return tableFlow(
    {
      heading: words.sheets,
      columns: [
        { title: c.sheet, align: 'end' },
        { title: c.stock, grows: true },
        { title: `${c.size}, ${dims.unit}`, align: 'end' },
        { title: c.blanks, align: 'end' },
        { title: c.used, align: 'end' },
        { title: `${c.offcut}, ${dims.unit}`, align: 'end' },
      ],
      rows: sheets.map(({ stock, parts, offcuts: [largest] }, i) => [
        String(first + i),
        stock.name,
        size(stock.x, stock.y),
        String(parts.length),
        percent(parts.reduce((sum, p) => sum + p.w * p.h, 0) / (stock.x * stock.y), 'nearest', dims),
        largest === undefined ? '' : size(largest.w, largest.h),
      ]),
      notes: [
        ...(sheets.length > 0 && missing.length === 0 ? [known] : []),
        ...missing.map(({ part, count }) => words.missing(part, count)),
      ],
    },
    setting,
  );
}
