import type { Bin, ShearProblem } from '../problem.js';
import { type Prized, rasterPoints } from '../value/points.js';
import { splitOf, type ValueTable, valueTable } from '../value/unlimited.js';
import { countsOf, type Drawn, dealt, grouped } from './drawn.js';
import type { Layout } from './layout.js';
import type { Filled } from './pack.js';

/** Work a table may take: points along x times points along y times cuts tried at each. */
const MOST_WORK = 2e8;
/** Patterns tried one after the other, each on what the ones before it left. */
const ROUNDS = 16;

/** Sheets filled by patterns, and the items that are left. */
export interface Patterned {
  readonly sheets: readonly Filled[];
  readonly left: readonly number[];
}

/** Items that are all alike. */
interface Kind {
  readonly w: number;
  readonly h: number;
  readonly ways: number;
  readonly items: number[];
}

/**
 * For orders of few kinds and many pieces: the best pattern of a whole sheet by exact dynamic programming, cut as often
 * as pieces last, then the next best of what is left. Of one kind of part no plan takes fewer sheets. Null where the
 * order is of too many kinds, or too small for it.
 * Measured on 16 sizes, 1,000 equal parts each, on 2 × 1 m: ruin and recreate alone takes up to 8 % more sheets in 11
 * of them. With one kind a linear programme would choose the same pattern: its column is the only one.
 */
export function patterned({ items, bins }: ShearProblem): Patterned | null {
  const [bin, b] = cheapest(bins);
  if (bin === undefined) return null;
  const kinds = kindsOf(items, bin);
  const sheets: Filled[] = [];
  let used = 0;
  const short = new Set<Kind>(); // too few are left for another pattern with them
  for (let round = 0; round < ROUNDS; round++) {
    const open = kinds.filter((k) => k.ways !== 0 && k.items.length > 0 && !short.has(k));
    const table = open.length === 0 ? null : tableOf(open, bin);
    const drawn = table === null ? null : draw(table);
    if (drawn === null || used === bin.count) break;
    const lasting = [...countsOf(drawn)].map(([k, n]) => {
      const kind = open[k] as Kind;
      return { kind, copies: Math.floor(kind.items.length / n) };
    });
    const least = lasting.reduce((a, b) => (b.copies < a.copies ? b : a));
    const copies = Math.min(bin.count - used, least.copies);
    if (copies === 0) short.add(least.kind);
    used += copies;
    const left = open.map((k) => k.items);
    for (let c = 0; c < copies; c++) sheets.push({ bin: b, layout: dealt(drawn, left) as Layout });
  }
  return sheets.length === 0 ? null : { sheets, left: kinds.flatMap((k) => k.items) };
}

/** The kind of sheet that gives most area for its cost, of those there are several of. */
function cheapest(bins: readonly Bin[]): readonly [Bin | undefined, number] {
  const worth = (b: Bin) => (b.count > 1 ? (b.x * b.y) / b.cost : 0);
  const best = bins.reduce((top, bin, i) => (worth(bin) > worth(bins[top] as Bin) ? i : top), 0);
  const bin = bins[best];
  return [bin !== undefined && bin.count > 1 ? bin : undefined, best];
}

function kindsOf(items: ShearProblem['items'], bin: Bin): readonly Kind[] {
  const kinds = new Map<string, Kind>();
  items.forEach(({ w, h }, i) => {
    const ways = bin.ways[i] as number;
    const key = `${w} ${h} ${ways}`;
    const kind = kinds.get(key) ?? { w, h, ways, items: [] };
    kinds.set(key, kind);
    kind.items.push(i);
  });
  return [...kinds.values()];
}

interface Way extends Prized {
  readonly kind: number;
}

/** The table of a sheet; null where it would take too long. */
function tableOf(kinds: readonly Kind[], bin: Bin): ValueTable | null {
  const ways = kinds.flatMap(({ w, h, ways: bits }, kind): readonly Way[] => [
    ...((bits & 1) !== 0 ? [{ w, h, value: w * h, kind }] : []),
    ...((bits & 2) !== 0 ? [{ w: h, h: w, value: w * h, kind }] : []),
  ]);
  if (ways.length > 2 * MOST_KINDS) return null;
  const xs = rasterPoints(
    ways.map((p) => p.w),
    bin.x,
  );
  const ys = rasterPoints(
    ways.map((p) => p.h),
    bin.y,
  );
  if (xs.length * ys.length * (xs.length + ys.length) > MOST_WORK) return null;
  return valueTable(ways, xs, ys, { x: bin.cutX, y: bin.cutY });
}

/** More kinds than this have too many sums of sizes. */
const MOST_KINDS = 6;

function draw(table: ValueTable): Drawn | null {
  const at = (i: number, j: number): Drawn | null => {
    const split = splitOf(table, i, j);
    if (split.kind === 'waste') return null;
    if (split.kind === 'item') {
      const { kind, w, h } = table.items[split.item] as Way;
      return { kind, w, h };
    }
    return grouped(
      split.kind,
      [at(...split.low), at(...split.high)].flatMap((d) => d ?? []),
    );
  };
  return at(table.xs.length - 1, table.ys.length - 1);
}
