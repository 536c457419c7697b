import { type GripColumn, ISO_15981_GRIPS } from './rivet-grips.js';

const COLUMNS: readonly GripColumn[] = ['2.4', '3.2', '4', '4.8', '6.4'];
/** Sizes this near are held to be the same in grip, mm: 3 and 3.2, 5 and 4.8, 6 and 6.4, inch sizes. */
const NEAR = 0.41;

/** The shortest blind rivet of a diameter that holds a stack, mm; null where the table has none. */
export function rivetLength(diameter: number, stack: number): number | null {
  const column = COLUMNS.find((c) => Math.abs(Number(c) - diameter) < NEAR);
  if (column === undefined) return null;
  const row = ISO_15981_GRIPS.find(({ spans }) => {
    const span = spans[column];
    return span !== undefined && stack >= span[0] - 1e-9 && stack <= span[1] + 1e-9;
  });
  return row?.length ?? null;
}
