const MOST = 128; // squares along a side of the grid
const A_SQUARE = 4; // boxes, on the average, before a finer grid is worth its squares

/** Calls `visit` once with the index of every box that meets the one from x0, y0 to x1, y1. */
export type BoxesNear = (
  box: readonly [x0: number, y0: number, x1: number, y1: number],
  visit: (index: number) => void,
) => void;

/**
 * Boxes in rows of four numbers, put into the squares of a grid that they reach into: asked for those near a box, only
 * the squares under it are looked through. Where they lie anyhow, asking for all of them takes time that grows with
 * their number, not its square.
 */
export function boxesNear(boxes: Float64Array): BoxesNear {
  const count = boxes.length / 4;
  const at = (i: number, k: number) => boxes[4 * i + k] as number;
  const [x0, y0, x1, y1] = around(boxes);
  const side = Math.max(1, Math.min(MOST, Math.floor(Math.sqrt(count / A_SQUARE))));
  const square = (v: number, low: number, high: number) =>
    Math.max(0, Math.min(side - 1, Math.floor(((v - low) / (high - low || 1)) * side)));
  const squares: number[][] = Array.from({ length: side * side }, () => []);
  const under = (
    [left, low, right, high]: readonly [number, number, number, number],
    work: (there: number[]) => void,
  ) => {
    const [i1, j1] = [square(right, x0, x1), square(high, y0, y1)];
    for (let j = square(low, y0, y1); j <= j1; j++)
      for (let i = square(left, x0, x1); i <= i1; i++) work(squares[j * side + i] as number[]);
  };
  for (let k = 0; k < count; k++)
    under([at(k, 0), at(k, 1), at(k, 2), at(k, 3)], (there) => void there.push(k));
  const asked = new Int32Array(count); // when each was met last: most reach into several squares
  let time = 0;
  return (box, visit) => {
    time += 1;
    const [left, low, right, high] = box;
    under(box, (there) => {
      for (const k of there) {
        if (asked[k] === time) continue;
        asked[k] = time;
        if (at(k, 0) <= right && at(k, 2) >= left && at(k, 1) <= high && at(k, 3) >= low) visit(k);
      }
    });
  };
}

function around(boxes: Float64Array): readonly [number, number, number, number] {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < boxes.length; i += 4) {
    x0 = Math.min(x0, boxes[i] as number);
    y0 = Math.min(y0, boxes[i + 1] as number);
    x1 = Math.max(x1, boxes[i + 2] as number);
    y1 = Math.max(y1, boxes[i + 3] as number);
  }
  return [x0, y0, x1, y1];
}
