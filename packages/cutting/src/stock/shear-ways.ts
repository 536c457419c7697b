import type { Blank } from './blank.js';
import { roomOf } from './room.js';
import type { StockSheet } from './sheet.js';
import { turnsAllowed } from './turns.js';

const SAME = 1e-6;

/** Is a sheet longer than a shear's longest cut both ways? Then no cut goes across it, and it is used whole or not at all. mm */
export const isBeyond = ({ x, y }: StockSheet, longest: number): boolean => Math.min(x, y) > longest + SAME;

/**
 * Ways a blank may lie on a sheet so that its grain, the sheet's room and a shear's longest cut allow it; none where it
 * cannot be cut from it. mm
 */
export function shearWays(
  blank: Pick<Blank, 'x' | 'y' | 'grain'>,
  sheet: StockSheet,
  longest: number,
): readonly ('drawn' | 'turned')[] {
  const [x, y] = roomOf(sheet);
  return turnsAllowed(blank, sheet).filter((turn) => {
    const [w, h] = turn === 'drawn' ? [blank.x, blank.y] : [blank.y, blank.x];
    if (w > x + SAME || h > y + SAME) return false;
    const [across, up] = [w >= sheet.x - SAME, h >= sheet.y - SAME]; // sides that need no cut
    if (across && up) return true;
    return !isBeyond(sheet, longest) && (up || w <= longest + SAME) && (across || h <= longest + SAME);
  });
}
