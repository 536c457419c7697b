import { type DepthTable, depthAt } from '../no-fit/depth-table.js';
import type { Floor } from './floor.js';

/** Pieces deeper in one another than this overlap, mm. */
export const TOUCH = 1e-3;

/** Depth of a piece, laid at a place, in another piece, mm; 0 where they only touch. */
export interface PairDepth {
  of(piece: number, shape: number, x: number, y: number, other: number): number;
  /** The way out for the piece asked last, x and y; good only where the depth was not 0. */
  readonly way: Float64Array;
}

/** The depth of A in B is that of B in A, bit for bit: a pair asks one table, from the piece of the lower shape. */
export function pairDepthOf(floor: Floor): PairDepth {
  const { kit, x: X, y: Y, shape: S } = floor;
  const count = kit.shapes.length;
  const cosines = Float64Array.from(kit.shapes, (s) => s.cos);
  const sines = Float64Array.from(kit.shapes, (s) => s.sin);
  const tables: (DepthTable | undefined)[] = new Array(count * count).fill(undefined);
  const way = new Float64Array(2);
  const fetch = (at: number): DepthTable => {
    const table = kit.table(Math.floor(at / count), at % count);
    tables[at] = table;
    return table;
  };
  const of = (i: number, si: number, xi: number, yi: number, j: number): number => {
    const sj = S[j] as number;
    const fixed = sj < si || (sj === si && j < i); // is j the fixed one?
    const at = fixed ? sj * count + si : si * count + sj;
    const table = tables[at] ?? fetch(at);
    const f = fixed ? sj : si;
    const c = cosines[f] as number;
    const s = sines[f] as number;
    let dx = xi - (X[j] as number);
    let dy = yi - (Y[j] as number);
    if (!fixed) {
      dx = -dx;
      dy = -dy;
    }
    const d = depthAt(table, c * dx + s * dy, c * dy - s * dx, way);
    if (d <= TOUCH) return 0;
    const wx = c * (way[0] as number) - s * (way[1] as number);
    const wy = s * (way[0] as number) + c * (way[1] as number);
    way[0] = fixed ? wx : -wx;
    way[1] = fixed ? wy : -wy;
    return d;
  };
  return { of, way };
}
