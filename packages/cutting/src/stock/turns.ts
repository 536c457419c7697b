import type { Blank } from './blank.js';
import type { StockSheet } from './sheet.js';

/**
 * Ways a blank may lie on a sheet for the sake of grain: as drawn, turned by a quarter, both, or none.
 * A blank or a sheet whose grain nobody said may lie both ways.
 */
export function turnsAllowed(
  blank: Pick<Blank, 'grain'>,
  sheet: Pick<StockSheet, 'grain'>,
): readonly ('drawn' | 'turned')[] {
  if (blank.grain === null || sheet.grain === null) return ['drawn', 'turned'];
  return blank.grain === sheet.grain ? ['drawn'] : ['turned'];
}
