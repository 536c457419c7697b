import { cite, type Severity } from '@tinwright/core';
import { sameMetal } from '../stock/blank.js';
import { roomOf, shortOf } from '../stock/room.js';
import type { StockSheet } from '../stock/sheet.js';
import { type CuttingFinding, cuttingFinding, type LeftWhy } from './cutting-findings.js';

/** Pieces of a part that no sheet was left for. */
export interface LeftPieces {
  readonly part: string;
  readonly material: string;
  readonly thickness: number;
  readonly count: number;
  readonly why: LeftWhy;
  /** Of one piece: extent, mm, area it takes of a sheet, mm², and mass, kg. */
  readonly x: number;
  readonly y: number;
  readonly area: number;
  readonly mass: number;
}

/** What was left out, with what is missing: by sheets of the kind that comes nearest, and by mass. */
export function leftOutFinding(
  left: LeftPieces,
  stock: readonly StockSheet[],
  severity: Severity = 'error',
): CuttingFinding {
  const { part, count, mass, area, why } = left;
  const [nearest] = stock
    .filter((s) => sameMetal(s, left))
    .toSorted((a, b) => shortOf(left, a) - shortOf(left, b) || b.x * b.y - a.x * a.y);
  const [x, y] = nearest === undefined ? [0, 0] : roomOf(nearest);
  const values = {
    count,
    kg: count * mass,
    sheets: nearest === undefined ? 0 : (count * area) / (nearest.x * nearest.y),
    of: nearest === undefined ? null : { name: nearest.name, x, y },
    why,
  };
  return cuttingFinding('left-out', severity, part, {
    values,
    source: [cite(null, { basis: 'derived' })],
    value: count * mass,
    unit: 'kg',
  });
}
