import { ValueHeap } from './heap.js';
import { type Prized, pointBelow, sums } from './points.js';
import { restTable } from './rest-table.js';
import { valueTable } from './unlimited.js';

/** An item that may be cut a number of times at most. */
export interface Limited extends Prized {
  readonly count: number;
}

/** Items joined to a block; `w` and `h` tight. */
export interface JoinedBlock {
  readonly w: number;
  readonly h: number;
  readonly value: number;
  /** How many of each item it holds. */
  readonly counts: readonly number[];
  readonly from:
    | { readonly kind: 'row' | 'column'; readonly a: JoinedBlock; readonly b: JoinedBlock }
    | { readonly kind: 'item'; readonly item: number };
}

/** What the exact search found, and whether it came to its end. */
export interface BestBlock {
  readonly block: JoinedBlock | null;
  readonly proved: boolean;
  /** No plan is worth more than this. */
  readonly bound: number;
}

const ROUNDING = 1e-6;

/**
 * Greatest value cut from one sheet by edge-to-edge cuts with a limited number of each item: blocks are joined, the most
 * promising first, until none may beat the best.
 * @param most blocks looked at before giving up; then `bound` says how much more there might be
 * Source: Wang 1983, Viswanathan & Bagchi 1993.
 */
export function limitedValue(
  sheet: { readonly x: number; readonly y: number },
  items: readonly Limited[],
  most: number = 200_000,
): BestBlock {
  const fits = ({ w, h }: { readonly w: number; readonly h: number }) =>
    w <= sheet.x + ROUNDING && h <= sheet.y + ROUNDING;
  const upTo = upperBound(sheet, items.filter(fits));
  const open = new ValueHeap<JoinedBlock>();
  const closed: JoinedBlock[] = [];
  const known = new Map<string, { readonly w: number; readonly h: number }[]>();
  let best: JoinedBlock | null = null;
  const offer = (block: JoinedBlock) => {
    if (!fits(block) || block.counts.some((c, i) => c > (items[i]?.count ?? 0))) return;
    const key = block.counts.join(' ');
    const same = known.get(key) ?? [];
    if (same.some((s) => s.w <= block.w + ROUNDING && s.h <= block.h + ROUNDING)) return;
    if (best === null || block.value > best.value) best = block;
    const promise = block.value + upTo(block);
    if (promise <= best.value) return;
    known.set(key, [...same, block]);
    open.push(promise, block);
  };
  items.forEach((p, item) => {
    const counts = items.map((_, i) => (i === item ? 1 : 0));
    offer({ w: p.w, h: p.h, value: p.value, counts, from: { kind: 'item', item } });
  });
  for (;;) {
    const next = open.pop();
    const found = (best as JoinedBlock | null)?.value ?? 0;
    if (next === undefined || next.key <= found) return { block: best, proved: true, bound: found };
    if (closed.length >= most) return { block: best, proved: false, bound: next.key };
    closed.push(next.value);
    for (const other of closed) {
      offer(joined('row', next.value, other));
      offer(joined('column', next.value, other));
    }
  }
}

function joined(kind: 'row' | 'column', a: JoinedBlock, b: JoinedBlock): JoinedBlock {
  const [w, h] = kind === 'row' ? [a.w + b.w, Math.max(a.h, b.h)] : [Math.max(a.w, b.w), a.h + b.h];
  const counts = a.counts.map((c, i) => c + (b.counts[i] ?? 0));
  return { w, h, value: a.value + b.value, counts, from: { kind, a, b } };
}

/** For a block, the most that the room around it can be worth. */
function upperBound(
  sheet: { readonly x: number; readonly y: number },
  items: readonly Limited[],
): (block: JoinedBlock) => number {
  const withEnd = (points: readonly number[], end: number) =>
    (points.at(-1) as number) < end - ROUNDING ? [...points, end] : points;
  const xs = withEnd(
    sums(
      items.map((p) => p.w),
      sheet.x,
    ),
    sheet.x,
  );
  const ys = withEnd(
    sums(
      items.map((p) => p.h),
      sheet.y,
    ),
    sheet.y,
  );
  const rest = restTable(valueTable(items, xs, ys));
  return ({ w, h }) => rest[pointBelow(xs, w) * ys.length + pointBelow(ys, h)] ?? 0;
}
