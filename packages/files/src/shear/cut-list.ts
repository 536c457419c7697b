import { MM_PER_INCH, plainNumber, type Unit } from '@tinwright/core';
import type { ShearPlan } from '@tinwright/cutting';
import { stringify } from 'csv-stringify/browser/esm/sync';

/** What a cut list says of a part beside its blank. */
export interface ListedPart {
  readonly part: string;
  /** mm² of the pattern, holes and notches taken off. */
  readonly area: number;
  /** kg of one */
  readonly mass: number;
}

const HEAD = [
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
] as const;

/**
 * Every blank with the sheet it comes from, as CSV (RFC 4180): sizes in the chosen unit, mass by true area, the share of
 * its sheet it takes and that share of the sheet's price; what no sheet was left for stands last without a sheet.
 */
export function cutListCsv(plans: readonly ShearPlan[], parts: readonly ListedPart[], unit: Unit): string {
  const size = (mm: number) => plainNumber(unit === 'mm' ? mm : mm / MM_PER_INCH, unit === 'mm' ? 2 : 4);
  const known = new Map(parts.map((p) => [p.part, p]));
  const rows = plans.flatMap(({ material, thickness, sheets, missing }) => [
    ...sheets.flatMap(({ stock, parts: blanks }, i) =>
      blanks.map((b): readonly (string | number)[] => {
        const share = (b.w * b.h) / (stock.x * stock.y);
        const [x, y] = b.turned ? [b.h, b.w] : [b.w, b.h];
        return [
          b.id,
          b.part,
          size(x),
          size(y),
          unit,
          material,
          plainNumber(thickness, 4),
          stock.name,
          i + 1,
          b.turned ? 'yes' : 'no',
          plainNumber(known.get(b.part)?.mass ?? 0, 4),
          plainNumber(share, 4),
          stock.price === null ? '' : plainNumber(share * stock.price, 2),
        ];
      }),
    ),
    ...missing.map(({ part, count }) => [
      `${count} missing`,
      part,
      '',
      '',
      unit,
      material,
      plainNumber(thickness, 4),
      '',
      '',
      '',
      plainNumber((known.get(part)?.mass ?? 0) * count, 4),
      '',
      '',
    ]),
  ]);
  return stringify([HEAD, ...rows], { record_delimiter: 'windows' });
}
