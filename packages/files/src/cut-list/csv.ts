import { MM_PER_INCH, type Unit } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import { torchMinutes } from '@tinwright/cutting/internal';
import { stringify } from 'csv-stringify/browser/esm/sync';
import type { OutFile } from '../out-file.js';
import type { CutWork } from './cut-list.js';

type Row = readonly (string | number)[];

const BLANKS = [
  'blank',
  'part',
  'x',
  'y',
  'unit',
  'material',
  'thickness_mm',
  'sheet',
  'sheet_number',
  'turned',
  'mass_kg',
  'sheet_share',
  'price',
  'cut_length',
  'pierces',
  'table_minutes_estimated',
] as const;

const FASTENERS = ['fastener', 'diameter_mm', 'length_mm', 'stack_mm', 'count', 'minutes_estimated'] as const;

/** Cells that a spreadsheet would take for a formula get a mark before them. */
const csv = (rows: readonly Row[]): string =>
  stringify(rows as Row[], { record_delimiter: 'windows', escape_formulas: true });

/** Files of a cut list: blanks, and fasteners where there are any. */
export function cutListFiles(work: CutWork, unit: Unit): readonly OutFile[] {
  return [
    { path: 'cutlist.csv', content: cutListCsv(work, unit) },
    ...(work.fasteners.length === 0 ? [] : [{ path: 'fasteners.csv', content: fastenersCsv(work) }]),
  ];
}

/**
 * Every blank with the sheet it comes from, as CSV (RFC 4180): sizes in the chosen unit, mass by true area, the share of
 * its sheet it takes and that share of the sheet's price, what a table would cut of it; sheets are numbered through all
 * plans; what no sheet was left for stands last without one.
 */
function cutListCsv({ plans, parts, rates }: CutWork, unit: Unit): string {
  const size = (mm: number) => plainNumber(unit === 'mm' ? mm : mm / MM_PER_INCH, unit === 'mm' ? 2 : 4);
  const known = new Map(parts.map((p) => [p.part, p]));
  const first = (p: number) => plans.slice(0, p).reduce((sum, { sheets }) => sum + sheets.length, 1);
  const cut = plans.flatMap(({ material, thickness, sheets }, p) =>
    sheets.flatMap(({ stock, parts: blanks }, i) =>
      blanks.map((b): Row => {
        const share = (b.w * b.h) / (stock.x * stock.y);
        const [x, y] = b.turned ? [b.h, b.w] : [b.w, b.h];
        const { mass = 0, cutLength = 0, pierces = 0 } = known.get(b.part) ?? {};
        return [
          b.id,
          b.part,
          size(x),
          size(y),
          unit,
          material,
          plainNumber(thickness, 4),
          stock.name,
          first(p) + i,
          b.turned ? 'yes' : 'no',
          plainNumber(mass, 4),
          plainNumber(share, 4),
          stock.price === null ? '' : plainNumber(share * stock.price, 2),
          size(cutLength),
          pierces,
          plainNumber(torchMinutes(cutLength, pierces, rates), 2),
        ];
      }),
    ),
  );
  const short = plans.flatMap(({ material, thickness, missing }) =>
    missing.map(({ part, count }): Row => {
      const mass = plainNumber((known.get(part)?.mass ?? 0) * count, 4);
      const metal = [unit, material, plainNumber(thickness, 4)];
      return [`${count} missing`, part, '', '', ...metal, '', '', '', mass, '', '', '', '', ''];
    }),
  );
  return csv([BLANKS, ...cut, ...short]);
}

function fastenersCsv({ fasteners, rates }: CutWork): string {
  const number = (mm: number | null) => (mm === null ? '' : plainNumber(mm, 2));
  return csv([
    FASTENERS,
    ...fasteners.map(({ kind, diameter, length, stack, count }): Row => {
      const minutes = stack === null ? '' : plainNumber((count * rates.fastener) / 60, 1);
      return [kind, number(diameter), number(length), number(stack), count, minutes];
    }),
  ]);
}
