import type { Prized } from './points.js';

/** Steps along the longer side of a sheet: sizes are rounded up to whole ones, so that what is found always fits. */
const CELLS = 2048;

/** Items stacked so often above each other. */
export interface Stack {
  readonly item: number;
  readonly copies: number;
}

/** A sheet cut into strips from edge to edge, each strip into stacks of equal items; strips as often as told. */
export interface Strips {
  readonly value: number;
  readonly strips: readonly (readonly Stack[])[];
}

/**
 * A sheet's worth of items by cuts in three stages, strips along x, each of the height of an item: the most valuable one
 * but for rounding to a two-thousandth of the sheet. Any number of each item.
 * Source: Gilmore & Gomory 1965, a knapsack of items in every strip and of strips in the sheet.
 */
export function bestStrips(
  sheet: { readonly x: number; readonly y: number },
  items: readonly Prized[],
): Strips {
  const cell = Math.max(sheet.x, sheet.y) / CELLS;
  const up = (size: number) => Math.max(1, Math.ceil(size / cell - 1e-6));
  const [across, high] = [Math.floor(sheet.x / cell + 1e-6), Math.floor(sheet.y / cell + 1e-6)];
  const sized = items
    .map(({ w, h, value }, item) => ({ item, w: up(w), h: up(h), value }))
    .filter((s) => s.value > 0 && s.w <= across && s.h <= high);
  const strips = [...new Set(sized.map((s) => s.h))].map((height) => {
    const stacks = sized
      .filter((s) => s.h <= height)
      .map((s) => ({ ...s, copies: Math.floor(height / s.h) }))
      .map(({ item, w, value, copies }) => ({ size: w, value: value * copies, what: { item, copies } }));
    return { size: height, ...knapsack(stacks, across) };
  });
  const { value, what } = knapsack(strips, high);
  return { value, strips: what };
}

interface Thing<T> {
  readonly size: number;
  readonly value: number;
  readonly what: T;
}

/** Things of the greatest value that fit together, any number of each. */
function knapsack<T>(things: readonly Thing<T>[], room: number): { value: number; what: readonly T[] } {
  const best = new Float64Array(room + 1);
  const taken = new Int32Array(room + 1).fill(-1);
  const sizes = Int32Array.from(things, (t) => t.size);
  const values = Float64Array.from(things, (t) => t.value);
  for (let r = 1; r <= room; r++) {
    let [top, of] = [best[r - 1] as number, -1];
    for (let t = 0; t < sizes.length; t++) {
      const size = sizes[t] as number;
      if (size > r) continue;
      const value = (best[r - size] as number) + (values[t] as number);
      if (value > top + 1e-12) {
        top = value;
        of = t;
      }
    }
    best[r] = top;
    taken[r] = of;
  }
  const what: T[] = [];
  for (let r = room; r > 0; ) {
    const t = taken[r] as number;
    if (t < 0) r--;
    else {
      what.push((things[t] as Thing<T>).what);
      r -= sizes[t] as number;
    }
  }
  return { value: best[room] as number, what };
}
