import { type DepthTable, depthAt, roughDepthAt } from '../no-fit/depth-table.js';
import type { Floor } from './floor.js';

/** Pieces deeper in one another than this overlap, mm. */
export const TOUCH = 1e-3;

/** Depth of a piece, laid at a place, in another piece, mm; 0 where they only touch. */
export interface PairDepth {
  of(piece: number, shape: number, x: number, y: number, other: number): number;
  /** The same nearly, by the cells of the table alone; where they only touch it may be more than 0. */
  roughly(piece: number, shape: number, x: number, y: number, other: number): number;
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
  // where the moving one of a pair lies, seen from the fixed one unturned; left by `facing`
  const seen = new Float64Array(2);
  /** Of two pieces the shape that is fixed; -1 - shape where that is the first piece's. */
  const facing = (i: number, si: number, xi: number, yi: number, j: number): number => {
    const sj = S[j] as number;
    const fixed = sj < si || (sj === si && j < i); // is j the fixed one?
    const f = fixed ? sj : si;
    const c = cosines[f] as number;
    const s = sines[f] as number;
    const dx = fixed ? xi - (X[j] as number) : (X[j] as number) - xi;
    const dy = fixed ? yi - (Y[j] as number) : (Y[j] as number) - yi;
    seen[0] = c * dx + s * dy;
    seen[1] = c * dy - s * dx;
    return fixed ? f : -1 - f;
  };
  const tableOf = (si: number, sj: number): DepthTable => {
    const at = sj < si ? sj * count + si : si * count + sj;
    return tables[at] ?? fetch(at);
  };
  const of = (i: number, si: number, xi: number, yi: number, j: number): number => {
    const face = facing(i, si, xi, yi, j);
    const d = depthAt(tableOf(si, S[j] as number), seen[0] as number, seen[1] as number, way);
    if (d <= TOUCH) return 0;
    const f = face < 0 ? -1 - face : face;
    const c = cosines[f] as number;
    const s = sines[f] as number;
    const wx = c * (way[0] as number) - s * (way[1] as number);
    const wy = s * (way[0] as number) + c * (way[1] as number);
    way[0] = face < 0 ? -wx : wx;
    way[1] = face < 0 ? -wy : wy;
    return d;
  };
  const roughly = (i: number, si: number, xi: number, yi: number, j: number): number => {
    facing(i, si, xi, yi, j);
    return roughDepthAt(tableOf(si, S[j] as number), seen[0] as number, seen[1] as number);
  };
  return { of, roughly, way };
}
