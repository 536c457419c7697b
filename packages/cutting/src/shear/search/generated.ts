import type { Cover, CoverColumn, CoverSolver } from '../lp/cover.js';
import type { Bin, ShearProblem } from '../problem.js';
import type { Prized } from '../value/points.js';
import { bestStrips, type Strips } from '../value/strips.js';
import { countsOf, type Drawn, dealt, grouped, mirrored } from './drawn.js';
import type { Filled } from './pack.js';
import type { Patterned } from './patterned.js';

/** Orders it is worth for: so many kinds at most, and so many pieces of each on average. */
const MOST_KINDS = 60;
const LEAST_PIECES = 4;
/** Rounds of new patterns at most; of many kinds fewer, as the work of one grows with their square: a second or two. */
const ROUNDS = 120;
const ROUNDS_OF_ONE = 100_000;
/** What leaving a piece out costs, in sheets of the dearest kind: patterns soon take its place. */
const LEFT = 100;

interface Kind {
  readonly w: number;
  readonly h: number;
  /** Ways it may lie on each kind of sheet. */
  readonly ways: readonly number[];
  readonly items: number[];
}

interface Pattern extends CoverColumn {
  readonly bin: number;
  readonly drawn: Drawn;
}

/**
 * For orders of several kinds and many pieces: patterns of whole sheets, generated one by one where the prices of a
 * linear programme say that another would save sheet, each cut as often as the programme says in whole numbers; what is
 * left over is for another search. Null where the order is too small, or of too many kinds.
 * Source: Gilmore & Gomory 1965, column generation.
 */
export function generated(problem: ShearProblem, solve: CoverSolver): Patterned | null {
  const kinds = kindsOf(problem);
  if (kinds.length > MOST_KINDS || problem.items.length < LEAST_PIECES * kinds.length) return null;
  const patterns = patternsFor(problem.bins, kinds, solve);
  const left = kinds.map((k) => [...k.items]);
  const sheets = patterns.flatMap(({ bin, drawn, times }): readonly Filled[] =>
    Array.from({ length: times }, () => dealt(drawn, left)).flatMap((layout) =>
      layout === null ? [] : [{ bin, layout }],
    ),
  );
  return sheets.length === 0 ? null : { sheets, left: left.flat() };
}

function kindsOf({ items, bins }: ShearProblem): readonly Kind[] {
  const kinds = new Map<string, Kind>();
  items.forEach(({ w, h }, i) => {
    const ways = bins.map((b) => b.ways[i] as number);
    const key = [w, h, ...ways].join(' ');
    const kind = kinds.get(key) ?? { w, h, ways, items: [] };
    kinds.set(key, kind);
    kind.items.push(i);
  });
  return [...kinds.values()].filter((k) => k.ways.some((bits) => bits !== 0));
}

function patternsFor(bins: readonly Bin[], kinds: readonly Kind[], solve: CoverSolver) {
  const limited = bins.flatMap((b, i) => (Number.isFinite(b.count) ? [i] : []));
  const least = [...kinds.map((k) => k.items.length), ...limited.map((b) => -(bins[b] as Bin).count)];
  const dear = LEFT * Math.max(...bins.map((b) => b.cost));
  const out = kinds.map((_, k): CoverColumn => ({ cost: dear, rows: [k], amounts: [1] }));
  const patterns: Pattern[] = [];
  const cover = (): Cover => ({ least, columns: [...out, ...patterns] });
  let answer = solve(cover());
  const rounds = Math.min(ROUNDS, Math.ceil(ROUNDS_OF_ONE / kinds.length ** 2));
  for (let round = 0; round < rounds && answer !== null; round++) {
    const { prices } = answer;
    const fresh = bins.flatMap((bin, b) => {
      const row = limited.indexOf(b);
      const rent = row < 0 ? 0 : (prices[kinds.length + row] as number);
      return patternsOf(bin, b, kinds, prices).flatMap(({ value, drawn }): readonly Pattern[] =>
        value <= (bin.cost + rent) * (1 + 1e-7) ? [] : [patternOf(bin, { b, row }, drawn, kinds.length)],
      );
    });
    if (fresh.length === 0) break;
    patterns.push(...fresh);
    answer = solve(cover());
  }
  const amounts = answer?.amounts ?? [];
  return patterns
    .map((p, i) => ({ ...p, times: Math.floor((amounts[out.length + i] ?? 0) + 1e-9) }))
    .filter((p) => p.times > 0);
}

function patternOf(
  bin: Bin,
  { b, row }: { readonly b: number; readonly row: number },
  drawn: Drawn,
  kinds: number,
): Pattern {
  const counts = [...countsOf(drawn)];
  return {
    bin: b,
    drawn,
    cost: bin.cost,
    rows: [...counts.map(([kind]) => kind), ...(row < 0 ? [] : [kinds + row])],
    amounts: [...counts.map(([, n]) => n), ...(row < 0 ? [] : [-1])],
  };
}

interface Way extends Prized {
  readonly kind: number;
}

/** The best patterns of a sheet at these prices: strips along x, and along y. */
function patternsOf(bin: Bin, b: number, kinds: readonly Kind[], prices: ArrayLike<number>) {
  const ways = kinds.flatMap(({ w, h, ways: bits }, kind): readonly Way[] => {
    const value = prices[kind] as number;
    const own = bits[b] as number;
    return [
      ...((own & 1) !== 0 ? [{ w, h, value, kind }] : []),
      ...((own & 2) !== 0 ? [{ w: h, h: w, value, kind }] : []),
    ];
  });
  const lying = bin.x <= bin.cutX ? [bestStrips(bin, ways)] : [];
  const turned = ways.map((way) => ({ ...way, w: way.h, h: way.w }));
  const upright = bin.y <= bin.cutY ? [bestStrips({ x: bin.y, y: bin.x }, turned)] : [];
  return [
    ...lying.flatMap((s) => drawnOf(s, ways)),
    ...upright.flatMap((s) => drawnOf(s, turned).map((p) => ({ ...p, drawn: mirrored(p.drawn) }))),
  ];
}

function drawnOf(
  { value, strips }: Strips,
  ways: readonly Way[],
): readonly { value: number; drawn: Drawn }[] {
  if (value <= 0) return [];
  const rows = strips.map((stacks) =>
    grouped(
      'row',
      stacks.map(({ item, copies }) => {
        const { kind, w, h } = ways[item] as Way;
        return grouped(
          'column',
          Array.from({ length: copies }, () => ({ kind, w, h })),
        );
      }),
    ),
  );
  return [{ value, drawn: grouped('column', rows) }];
}
