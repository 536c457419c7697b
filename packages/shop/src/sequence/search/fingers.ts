import type { Stretch } from '../stations/station.js';

/** Least and greatest width of tools in a stretch, mm. */
export type StretchRoom = Pick<Stretch, 'least' | 'most'>;

/** Tools mounted: for each stretch the pieces that stand in it, widest first; null for the whole rack side by side. */
export type ToolSet = readonly (readonly number[])[] | null;

/** No tool is on. */
export const NONE_ON: ToolSet = [];

/** Name of a tool set, the same for the same pieces. */
export function toolSetKey(set: ToolSet): string {
  return set === null ? 'all' : set.map((s) => s.join('+')).join(' | ');
}

/** True when tools that are mounted already do for these stretches. */
export function serves(
  set: ToolSet,
  stretches: readonly StretchRoom[],
  rack: readonly number[],
  inner: number,
): boolean {
  if (stretches.length === 0) return true;
  const groups = set ?? [rack];
  if (groups.length !== stretches.length) return false;
  return stretches.every((s, i) => fits(groups[i] as readonly number[], s, inner));
}

/** Pieces fit a stretch when they go in, and cover enough of it, gaps between them included. */
function fits(pieces: readonly number[], { least, most }: StretchRoom, inner: number): boolean {
  const sum = pieces.reduce((s, p) => s + p, 0);
  return pieces.length > 0 && sum <= most + 1e-9 && sum + (pieces.length - 1) * inner >= least - 1e-9;
}

/**
 * Pieces from the rack for every stretch, or `none`: the fewest changed against those that are on, then the least left
 * bare, then the fewest pieces, then the widest. Longer stretches choose first.
 * @param current what is on; null for the whole rack
 */
export function chooseTools(
  current: ToolSet,
  stretches: readonly StretchRoom[],
  rack: readonly number[],
  inner: number,
): ToolSet | 'none' {
  const on = (current ?? [rack]).flat();
  const left = rack.toSorted((a, b) => b - a);
  const order = stretches.map((_, i) => i).toSorted((a, b) => wanted(stretches[b]) - wanted(stretches[a]));
  const chosen: (readonly number[])[] = [];
  for (const i of order) {
    const pieces = best(left, on, stretches[i] as StretchRoom, inner);
    if (pieces === null) return 'none';
    chosen[i] = pieces;
    for (const p of pieces) left.splice(left.indexOf(p), 1);
  }
  return chosen;
}

const wanted = (s: StretchRoom | undefined) => s?.least ?? 0;

/** Pieces taken so far, the last one first: `kept` of them are on. */
interface Taken {
  readonly sum: number;
  readonly count: number;
  readonly kept: number;
  readonly piece: number;
  readonly rest: Taken | null;
}

/**
 * The best choice for one stretch, from the whole rack: of all choices with the same width and number of pieces the one
 * with most pieces that are on (subset sums by dynamic programming: Bellman 1957), piece by piece, the widest first.
 */
function best(
  rack: readonly number[],
  on: readonly number[],
  stretch: StretchRoom,
  inner: number,
): readonly number[] | null {
  // an open stretch takes no more than it needs
  const target = Number.isFinite(stretch.most) ? stretch.most : stretch.least;
  const bare = ({ sum }: Taken) => Math.abs(target - sum);
  const changed = ({ count, kept }: Taken) => count - 2 * kept;
  const ends = sumsOf(rack, on, stretch.most).filter(
    ({ sum, count }) => sum <= stretch.most + 1e-9 && sum + (count - 1) * inner >= stretch.least - 1e-9,
  );
  const [found] = ends.toSorted(
    (a, b) =>
      changed(a) - changed(b) ||
      (Math.abs(bare(a) - bare(b)) < 1e-9 ? 0 : bare(a) - bare(b)) ||
      a.count - b.count ||
      byWidth(piecesOf(a), piecesOf(b)),
  );
  return found === undefined ? null : piecesOf(found);
}

/** Every width and number of pieces there is up to a width. */
function sumsOf(rack: readonly number[], on: readonly number[], most: number): readonly Taken[] {
  const left = [...on];
  const sums = new Map<string, Taken>();
  for (const piece of rack) {
    const i = left.indexOf(piece);
    if (i >= 0) left.splice(i, 1);
    const more = [null, ...sums.values()].map(
      (rest): Taken => ({
        sum: (rest?.sum ?? 0) + piece,
        count: (rest?.count ?? 0) + 1,
        kept: (rest?.kept ?? 0) + (i >= 0 ? 1 : 0),
        piece,
        rest,
      }),
    );
    for (const taken of more) {
      if (taken.sum > most + 1e-9) continue;
      const key = `${Math.round(taken.sum * 1e4)} ${taken.count}`;
      const known = sums.get(key);
      // what came first has the wider pieces
      if (known === undefined || taken.kept > known.kept) sums.set(key, taken);
    }
  }
  return [...sums.values()];
}

function piecesOf(taken: Taken): readonly number[] {
  const pieces: number[] = [];
  for (let t: Taken | null = taken; t !== null; t = t.rest) pieces.push(t.piece);
  return pieces.toReversed();
}

/** The one with the wider pieces first. */
function byWidth(a: readonly number[], b: readonly number[]): number {
  const i = a.findIndex((v, k) => v !== b[k]);
  return i < 0 ? 0 : (b[i] as number) - (a[i] as number);
}

/** Pieces taken off and put on to come from one choice to another. */
export function difference<T>(from: readonly T[], to: readonly T[]): number {
  const left = [...from];
  let added = 0;
  for (const piece of to) {
    const i = left.indexOf(piece);
    if (i < 0) added += 1;
    else left.splice(i, 1);
  }
  return added + left.length;
}
