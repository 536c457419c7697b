import { MM_PER_INCH, type Unit } from '@tinwright/core';
import type { StripRow } from '@tinwright/shop';
import { changedText, type ListedRow } from '../text/changed-text.js';

const rounded = (value: number, digits: number) => Number(value.toFixed(digits));

/** A row as it stands in a shop file of a unit. */
export function rowData(row: StripRow, units: Unit): ListedRow {
  const size = (mm: number) => (units === 'mm' ? rounded(mm, 4) : rounded(mm / MM_PER_INCH, 6));
  return {
    name: row.name,
    material: row.material,
    thickness: size(row.thickness),
    insideRadius: size(row.insideRadius),
    k: rounded(row.k, 4),
    kError: rounded(row.kError, 4),
    ...(row.springback === null
      ? {}
      : { springback: rounded(row.springback, 2), springbackError: rounded(row.springbackError, 2) }),
    strips: row.strips,
  };
}

/** The text of a shop file with a row put in the place of number `at` of its strips, or behind them. The rest stays. */
export const withRow = (text: string, row: ListedRow, at: number | null): string =>
  changedText(text, { list: 'strips', ...(at === null ? { more: [row] } : { rows: new Map([[at, row]]) }) });
