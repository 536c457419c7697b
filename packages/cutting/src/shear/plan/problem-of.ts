import { type Blank, pieceId } from '../../stock/blank.js';
import type { Rack, StockSheet, UseOfOffcuts } from '../../stock/sheet.js';
import { turnsAllowed } from '../../stock/turns.js';
import type { Bin, ShearItem, ShearProblem } from '../problem.js';
import type { ShearLimits } from './limits.js';

const SAME = 1e-6;
/** What using an offcut up counts against a full sheet of the same size where prices are not known. */
const OFFCUT = 1e-3;

/** A piece to cut, one of a blank's. */
export interface ShearPiece {
  readonly id: string;
  readonly blank: Blank;
}

/** A problem of rectangles with what its numbers stand for. */
export interface Named {
  readonly problem: ShearProblem;
  readonly pieces: readonly ShearPiece[];
  readonly stock: readonly StockSheet[];
}

/** Size of a sheet less its trim. */
export function usable({ x, y, trim }: StockSheet): { readonly x: number; readonly y: number } {
  return { x: x - trim.west - trim.east, y: y - trim.south - trim.north };
}

/**
 * Blanks of one metal and the sheets of it as a problem without kerf or trim: every size grown by one kerf, sheets less
 * their trim.
 */
export function problemOf(blanks: readonly Blank[], rack: Rack, limits: ShearLimits): Named {
  const pieces = blanks.flatMap((blank) =>
    Array.from({ length: blank.quantity }, (_, i) => ({ id: pieceId(blank.part, i), blank })),
  );
  const stock = rack.sheets.filter((s) => s.outline === null && s.count > 0);
  const items = pieces.map(({ blank }) => ({ w: blank.x + rack.kerf, h: blank.y + rack.kerf }));
  const cost = costs(stock, rack.offcuts ?? 'free');
  const bins = stock.map((sheet, t): Bin => {
    const room = usable(sheet);
    return {
      x: room.x + rack.kerf,
      y: room.y + rack.kerf,
      cutX: limits.length + rack.kerf,
      cutY: limits.length + rack.kerf,
      cost: cost[t] as number,
      count: sheet.count,
      ways: Uint8Array.from(pieces, ({ blank }) => waysOn(blank, sheet, limits)),
    };
  });
  return { problem: { items: items satisfies ShearItem[], bins }, pieces, stock };
}

/** Ways a blank may lie on a sheet: bit 1 as drawn, bit 2 turned; 0 where it cannot be cut from it. */
function waysOn(blank: Blank, sheet: StockSheet, { length }: ShearLimits): number {
  const room = usable(sheet);
  const fits = (w: number, h: number) =>
    w <= room.x + SAME &&
    h <= room.y + SAME &&
    (w <= length + SAME || h >= sheet.y - SAME) &&
    (h <= length + SAME || w >= sheet.x - SAME);
  const square = Math.abs(blank.x - blank.y) < SAME;
  return turnsAllowed(blank, sheet).reduce((bits, way) => {
    if (way === 'drawn') return fits(blank.x, blank.y) ? bits | 1 : bits;
    return fits(blank.y, blank.x) && !(square && (bits & 1) !== 0) ? bits | 2 : bits;
  }, 0);
}

/**
 * Prices where every sheet has one; else shares of the largest sheet. Offcuts count next to nothing; those at cost by their own price, or by area at that of the cheapest sheet.
 */
function costs(stock: readonly StockSheet[], offcuts: UseOfOffcuts): readonly number[] {
  const largest = Math.max(...stock.map((s) => s.x * s.y));
  const share = ({ x, y }: StockSheet) => (x * y) / largest;
  const full = stock.filter((s) => s.origin === 'sheet');
  const priced = full.every((s) => s.price !== null);
  const dearest = Math.max(...full.map((s) => s.price ?? 1), 1);
  const perShare = priced ? Math.min(...full.map((s) => (s.price ?? 1) / share(s)), dearest) : 1;
  return stock.map((s) => {
    const least = OFFCUT * share(s) * (priced ? dearest : 1);
    if (s.origin === 'offcut' && offcuts !== 'at-cost') return least;
    if (s.origin === 'offcut') return Math.max((priced ? s.price : null) ?? perShare * share(s), least);
    return priced && s.price !== null ? Math.max(s.price, OFFCUT) : share(s);
  });
}
