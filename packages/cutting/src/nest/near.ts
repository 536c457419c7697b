import type { Floor } from './floor.js';

/** Which pieces a moving one can meet round a place: what is asked again near by is answered from the last time. */
export interface Near {
  /** Pieces whose box may meet that of the piece, itself left out; how many of `pieces` are meant. */
  round(piece: number, shape: number, x: number, y: number): number;
  readonly pieces: Int32Array;
  /** Pieces have moved. */
  forget(): void;
}

/** How far round a place an answer is good: a share of the sides of the piece's box. */
const REACH = 0.15;

/** @param sizes box of every shape, four numbers each */
export function nearOf({ boxes, shape: shapes }: Floor, sizes: Float64Array): Near {
  const n = shapes.length;
  const pieces = new Int32Array(n);
  let count = 0;
  // what the answer is for: piece and shape, and the least and most x and y of its place
  const asked = Int32Array.of(-1, -1);
  const good = new Float64Array(4);
  const gather = (piece: number, shape: number, x: number, y: number): number => {
    const k = 4 * shape;
    const [bx0, by0] = [sizes[k] as number, sizes[k + 1] as number];
    const [bx1, by1] = [sizes[k + 2] as number, sizes[k + 3] as number];
    const reachX = (bx1 - bx0) * REACH;
    const reachY = (by1 - by0) * REACH;
    asked[0] = piece;
    asked[1] = shape;
    good[0] = x - reachX;
    good[1] = y - reachY;
    good[2] = x + reachX;
    good[3] = y + reachY;
    const x0 = x + bx0 - reachX;
    const y0 = y + by0 - reachY;
    const x1 = x + bx1 + reachX;
    const y1 = y + by1 + reachY;
    count = 0;
    for (let j = 0, b = 0; j < n; j++, b += 4) {
      if (x1 <= (boxes[b] as number) || x0 >= (boxes[b + 2] as number)) continue;
      if (y1 <= (boxes[b + 1] as number) || y0 >= (boxes[b + 3] as number) || j === piece) continue;
      pieces[count++] = j;
    }
    return count;
  };
  const round = (piece: number, shape: number, x: number, y: number): number => {
    const known =
      piece === asked[0] &&
      shape === asked[1] &&
      x >= (good[0] as number) &&
      y >= (good[1] as number) &&
      x <= (good[2] as number) &&
      y <= (good[3] as number);
    return known ? count : gather(piece, shape, x, y);
  };
  return {
    round,
    pieces,
    forget: () => {
      asked[0] = -1;
    },
  };
}
