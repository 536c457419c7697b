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
  const most = Math.max(1, Math.min(MOST, Math.floor(Math.sqrt(count / A_SQUARE))));
  const [across, up] = [squaresAlong(boxes, 0, x1 - x0, most), squaresAlong(boxes, 1, y1 - y0, most)];
  const square = (v: number, low: number, high: number, squares: number) =>
    Math.max(0, Math.min(squares - 1, Math.floor(((v - low) / (high - low || 1)) * squares)));
  const under = (
    [left, low, right, high]: readonly [number, number, number, number],
    work: (square: number) => void,
  ) => {
    const [i1, j1] = [square(right, x0, x1, across), square(high, y0, y1, up)];
    for (let j = square(low, y0, y1, up); j <= j1; j++)
      for (let i = square(left, x0, x1, across); i <= i1; i++) work(j * across + i);
  };
  const eachBox = (work: (k: number, square: number) => void) => {
    for (let k = 0; k < count; k++) under([at(k, 0), at(k, 1), at(k, 2), at(k, 3)], (s) => work(k, s));
  };
  const ends = new Uint32Array(across * up + 1); // of the boxes of each square, in one row
  eachBox((_, s) => {
    ends[s] = (ends[s] as number) + 1;
  });
  for (let s = 1; s < ends.length; s++) ends[s] = (ends[s] as number) + (ends[s - 1] as number);
  const there = new Uint32Array(ends[ends.length - 1] as number);
  const starts = ends.slice();
  eachBox((k, s) => {
    starts[s] = (starts[s] as number) - 1;
    there[starts[s] as number] = k;
  });
  const asked = new Int32Array(count); // when each was met last: most reach into several squares
  let time = 0;
  return (box, visit) => {
    time += 1;
    const [left, low, right, high] = box;
    under(box, (s) => {
      for (let n = starts[s] as number; n < (ends[s] as number); n++) {
        const k = there[n] as number;
        if (asked[k] === time) continue;
        asked[k] = time;
        if (at(k, 0) <= right && at(k, 2) >= left && at(k, 1) <= high && at(k, 3) >= low) visit(k);
      }
    });
  };
}

/** So many squares along an axis that a box of middling size reaches into few: seen edge on, a sheet is one row of them. */
function squaresAlong(boxes: Float64Array, axis: 0 | 1, length: number, most: number): number {
  let sum = 0;
  for (let i = axis; i < boxes.length; i += 4) sum += (boxes[i + 2] as number) - (boxes[i] as number);
  const middling = sum / (boxes.length / 4);
  return middling * most > length ? Math.max(1, Math.floor(length / middling)) : most;
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
