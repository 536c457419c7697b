import type { StockSheet } from './sheet.js';

/** What is left of a sheet inside its trim, x and y. mm */
export function roomOf({ x, y, trim }: StockSheet): readonly [number, number] {
  return [x - trim.west - trim.east, y - trim.south - trim.north];
}

/** How much a sheet lacks for a piece, the better way round, mm; 0 where it is large enough. */
export function shortOf(piece: { readonly x: number; readonly y: number }, sheet: StockSheet): number {
  const [x, y] = roomOf(sheet);
  const lack = (w: number, h: number) => Math.max(0, w - x) + Math.max(0, h - y);
  return Math.min(lack(piece.x, piece.y), lack(piece.y, piece.x));
}
