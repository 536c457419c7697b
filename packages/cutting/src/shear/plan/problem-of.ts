import { type Blank, pieceId } from '../../stock/blank.js';
import { roomOf } from '../../stock/room.js';
import { shearWays } from '../../stock/shear-ways.js';
import type { Rack, StockSheet, UseOfOffcuts } from '../../stock/sheet.js';
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
    const [x, y] = roomOf(sheet);
    return {
      x: x + rack.kerf,
      y: y + rack.kerf,
      cutX: limits.length + rack.kerf,
      cutY: limits.length + rack.kerf,
      cost: cost[t] as number,
      count: sheet.count,
      ways: Uint8Array.from(pieces, ({ blank }) => waysOn(blank, sheet, limits)),
    };
  });
  return { problem: { items: items satisfies ShearItem[], bins }, pieces, stock };
}

/** Ways a blank may lie on a sheet: bit 1 as drawn, bit 2 turned, a square one way; 0 where it cannot be cut from it. */
function waysOn(blank: Blank, sheet: StockSheet, { length }: ShearLimits): number {
  const ways = shearWays(blank, sheet, length);
  const square = Math.abs(blank.x - blank.y) < SAME;
  return (square ? ways.slice(0, 1) : ways).reduce((bits, way) => bits | (way === 'drawn' ? 1 : 2), 0);
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
