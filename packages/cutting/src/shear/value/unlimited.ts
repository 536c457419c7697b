import { type Prized, pointBelow, rasterPoints } from './points.js';

/** What the best cut of every smaller sheet is worth, by points along x and y. */
export interface ValueTable {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** Row by x: `best[i * ys.length + j]` is the value of a sheet `xs[i]` by `ys[j]`. */
  readonly best: Float64Array;
  readonly items: readonly Prized[];
  readonly longest: LongestCuts;
}

/** The longest cuts that can be made, along x and along y. */
export interface LongestCuts {
  readonly x: number;
  readonly y: number;
}

const ANY_LENGTH: LongestCuts = { x: Number.POSITIVE_INFINITY, y: Number.POSITIVE_INFINITY };

/** A cut of a table, and what it leaves on both sides, as indices of points. */
export type Split =
  | {
      readonly kind: 'row' | 'column';
      readonly low: readonly [number, number];
      readonly high: readonly [number, number];
    }
  | { readonly kind: 'item'; readonly item: number }
  | { readonly kind: 'waste' };

/** For point i: last index of a low side worth trying, and the index of what is left beside each. */
function halves(points: readonly number[]): readonly Int32Array[] {
  return points.map((length) => {
    const sides: number[] = [];
    for (let a = 1; a < points.length && (points[a] as number) <= length / 2 + 1e-6; a++)
      sides.push(pointBelow(points, length - (points[a] as number)));
    return Int32Array.from(sides);
  });
}

/**
 * Greatest value cut from one sheet by edge-to-edge cuts, any number of each item, any number of stages; exact.
 * @param points places to cut at, along x and y; those of `rasterPoints` do for the sheet itself
 * Source: Gilmore & Gomory 1966, Beasley 1985: every sheet is one item, or parted in two.
 */
export function valueTable(
  items: readonly Prized[],
  xs: readonly number[],
  ys: readonly number[],
  longest: LongestCuts = ANY_LENGTH,
): ValueTable {
  const [n, m] = [xs.length, ys.length];
  const best = new Float64Array(n * m);
  for (const { w, h, value } of items) {
    const [i0, j0] = [firstAt(xs, w), firstAt(ys, h)];
    for (let i = i0; i < n; i++)
      for (let j = j0; j < m; j++) if (value > (best[i * m + j] as number)) best[i * m + j] = value;
  }
  const [alongX, alongY] = [halves(xs), halves(ys)];
  const high = longest.y === Number.POSITIVE_INFINITY ? m : pointBelow(ys, longest.y) + 1; // rows low enough to part across
  for (let i = 0; i < n; i++) {
    splitRow(best, i, m, alongX[i] as Int32Array, high);
    if ((xs[i] as number) <= longest.x + 1e-6) splitColumn(best, i, m, alongY);
  }
  return { xs, ys, best, items, longest };
}

/** Index of the first point a size fits into. */
function firstAt(points: readonly number[], size: number): number {
  const i = points.findIndex((p) => p >= size - 1e-6);
  return i < 0 ? points.length : i;
}

function splitRow(best: Float64Array, i: number, m: number, sides: Int32Array, rows: number): void {
  const own = best.subarray(i * m, i * m + m);
  for (let a = 0; a < sides.length; a++) {
    const low = best.subarray((a + 1) * m, (a + 2) * m);
    const high = best.subarray((sides[a] as number) * m, (sides[a] as number) * m + m);
    for (let j = 0; j < rows; j++) {
      const v = (low[j] as number) + (high[j] as number);
      if (v > (own[j] as number)) own[j] = v;
    }
  }
}

function splitColumn(best: Float64Array, i: number, m: number, sides: readonly Int32Array[]): void {
  const own = best.subarray(i * m, i * m + m);
  for (let j = 0; j < m; j++) {
    const beside = sides[j] as Int32Array;
    let top = own[j] as number;
    for (let a = 0; a < beside.length; a++) {
      const v = (own[a + 1] as number) + (own[beside[a] as number] as number);
      if (v > top) top = v;
    }
    own[j] = top;
  }
}

/** How the best of a cell comes about. */
export function splitOf(table: ValueTable, i: number, j: number): Split {
  const { xs, ys, best, items, longest } = table;
  const m = ys.length;
  const value = best[i * m + j] as number;
  const is = (v: number) => Math.abs(v - value) <= 1e-9 * Math.max(1, value);
  if (value <= 0) return { kind: 'waste' };
  const [x, y] = [xs[i] as number, ys[j] as number];
  const item = items.findIndex((p) => is(p.value) && p.w <= x + 1e-6 && p.h <= y + 1e-6);
  if (item >= 0) return { kind: 'item', item };
  for (let a = 1; a < i && y <= longest.y + 1e-6; a++) {
    const b = pointBelow(xs, x - (xs[a] as number));
    if (is((best[a * m + j] as number) + (best[b * m + j] as number)))
      return { kind: 'row', low: [a, j], high: [b, j] };
  }
  for (let a = 1; a < j && x <= longest.x + 1e-6; a++) {
    const b = pointBelow(ys, y - (ys[a] as number));
    if (is((best[i * m + a] as number) + (best[i * m + b] as number)))
      return { kind: 'column', low: [i, a], high: [i, b] };
  }
  return { kind: 'waste' };
}

/** Greatest value of a sheet cut into any number of each item; exact. Sizes in any one unit. */
export function unlimitedValue(
  sheet: { readonly x: number; readonly y: number },
  items: readonly Prized[],
): ValueTable {
  const fitting = items.filter((p) => p.w <= sheet.x + 1e-6 && p.h <= sheet.y + 1e-6);
  return valueTable(
    fitting,
    rasterPoints(
      fitting.map((p) => p.w),
      sheet.x,
    ),
    rasterPoints(
      fitting.map((p) => p.h),
      sheet.y,
    ),
  );
}
