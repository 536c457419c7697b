import type { Bin, ShearProblem } from '../problem.js';
import { dualFeasible } from './dual-feasible.js';

const ROUNDING = 1e-6;

/**
 * A cost no plan of a problem can be below: by area, by the cheapest sheet of its dearest item, and with a single kind of sheet by products of dual feasible
 * functions, each item in the way it weighs least.
 */
export function lowerBound({ items, bins }: ShearProblem): number {
  const cuttable = items.flatMap((item, i) => (bins.some((b) => b.ways[i] !== 0) ? [{ ...item, i }] : []));
  const area = cuttable.reduce((sum, { w, h }) => sum + w * h, 0);
  const [only] = bins;
  if (only === undefined || cuttable.length === 0) return 0;
  if (bins.length > 1) {
    const own = ({ i }: { readonly i: number }) =>
      Math.min(...bins.map((b) => ((b.ways[i] as number) === 0 ? Number.POSITIVE_INFINITY : b.cost)));
    // some sheet must take the item that goes on the dearest ones only
    return Math.max(
      costOfArea(area, bins),
      cuttable.reduce((most, item) => Math.max(most, own(item)), 0),
    );
  }
  const kinds = new Map<string, { readonly ways: readonly Share[]; count: number }>();
  for (const { w, h, i } of cuttable) {
    const bits = only.ways[i] as number;
    const kind = kinds.get(`${w} ${h} ${bits}`) ?? { ways: shareOf(w, h, only, bits), count: 0 };
    kind.count++;
    kinds.set(`${w} ${h} ${bits}`, kind);
  }
  const shares = [...kinds.values()];
  const lengths = [...new Set(shares.flatMap((s) => s.ways.flat()))];
  const functions = dualFeasible(lengths);
  const tables = functions.map((f) => new Map(lengths.map((x) => [x, f(x)])));
  let best = Math.ceil(area / (only.x * only.y) - ROUNDING);
  for (const f of tables)
    for (const g of tables) {
      let sum = 0;
      for (const { ways, count } of shares) {
        let least = Number.POSITIVE_INFINITY;
        for (const [x, y] of ways) least = Math.min(least, (f.get(x) as number) * (g.get(y) as number));
        sum += count * least;
      }
      best = Math.max(best, Math.ceil(sum - ROUNDING));
    }
  return best * only.cost;
}

type Share = readonly [number, number];

function shareOf(w: number, h: number, bin: Bin, ways: number): readonly Share[] {
  const share = (x: number): number => Math.round(x * 1e9) / 1e9;
  const drawn: Share = [share(w / bin.x), share(h / bin.y)];
  const turned: Share = [share(h / bin.x), share(w / bin.y)];
  return [...((ways & 1) !== 0 ? [drawn] : []), ...((ways & 2) !== 0 ? [turned] : [])];
}

/** The cheapest sheets that have an area, could they be cut to any shape. */
function costOfArea(area: number, bins: readonly Bin[]): number {
  let [left, cost] = [area, 0];
  for (const { x, y, cost: one, count } of bins.toSorted(
    (a, b) => a.cost / (a.x * a.y) - b.cost / (b.x * b.y),
  )) {
    const sheets = Math.min(count, left / (x * y));
    cost += sheets * one;
    left -= sheets * x * y;
    if (left <= 0) break;
  }
  return cost - ROUNDING;
}
