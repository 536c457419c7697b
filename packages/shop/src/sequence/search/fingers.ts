import type { Stretch } from '../stations/station.js';

/** Tools mounted: for each stretch the pieces that stand in it, widest first; null for the whole rack side by side. */
export type ToolSet = readonly (readonly number[])[] | null;

/** Name of a tool set, the same for the same pieces. */
export function toolSetKey(set: ToolSet): string {
  return set === null ? 'all' : set.map((s) => s.join('+')).join(' | ');
}

/** True when tools that are mounted already do for these stretches. */
export function serves(
  set: ToolSet,
  stretches: readonly Stretch[],
  rack: readonly number[],
  inner: number,
): boolean {
  if (stretches.length === 0) return true;
  const groups = set ?? [rack];
  if (groups.length !== stretches.length) return false;
  return stretches.every((s, i) => fits(groups[i] as readonly number[], s, inner));
}

/** Pieces fit a stretch when they go in, and cover enough of it, gaps between them included. */
function fits(pieces: readonly number[], { least, most }: Stretch, inner: number): boolean {
  const sum = pieces.reduce((s, p) => s + p, 0);
  return pieces.length > 0 && sum <= most + 1e-9 && sum + (pieces.length - 1) * inner >= least - 1e-9;
}

const MOST_PIECES = 20; // all choices are tried: 2^20

/**
 * Pieces from the rack for every stretch, or `none`: the fewest changed against those that are on, then the least left
 * bare, then the fewest pieces, then the widest. Longer stretches choose first.
 * @param current what is on; null for the whole rack
 */
export function chooseTools(
  current: ToolSet,
  stretches: readonly Stretch[],
  rack: readonly number[],
  inner: number,
): ToolSet | 'none' {
  const on = (current ?? [rack]).flat();
  const left = rack.toSorted((a, b) => b - a).slice(0, MOST_PIECES);
  const order = stretches.map((_, i) => i).toSorted((a, b) => wanted(stretches[b]) - wanted(stretches[a]));
  const chosen: (readonly number[])[] = [];
  for (const i of order) {
    const pieces = best(left, on, stretches[i] as Stretch, inner);
    if (pieces === null) return 'none';
    chosen[i] = pieces;
    for (const p of pieces) left.splice(left.indexOf(p), 1);
  }
  return chosen;
}

const wanted = (s: Stretch | undefined) => s?.least ?? 0;

function best(
  rack: readonly number[],
  on: readonly number[],
  stretch: Stretch,
  inner: number,
): readonly number[] | null {
  let found: { readonly pieces: readonly number[]; readonly changed: number; readonly bare: number } | null =
    null;
  // an open stretch takes no more than it needs
  const target = Number.isFinite(stretch.most) ? stretch.most : stretch.least;
  for (const pieces of choices(rack, stretch.most)) {
    if (!fits(pieces, stretch, inner)) continue;
    const bare = Math.abs(target - pieces.reduce((s, p) => s + p, 0));
    const changed = difference(on, pieces);
    const better =
      found === null ||
      changed < found.changed ||
      (changed === found.changed &&
        (bare < found.bare - 1e-9 || (bare < found.bare + 1e-9 && fewer(pieces, found.pieces))));
    if (better) found = { pieces, changed, bare };
  }
  return found?.pieces ?? null;
}

/** Pieces taken off and put on to come from one choice to another. */
export function difference(from: readonly number[], to: readonly number[]): number {
  const left = [...from];
  let added = 0;
  for (const piece of to) {
    const i = left.indexOf(piece);
    if (i < 0) added += 1;
    else left.splice(i, 1);
  }
  return added + left.length;
}

/** Fewer pieces first, then the one with the wider pieces. */
function fewer(a: readonly number[], b: readonly number[]): boolean {
  if (a.length !== b.length) return a.length < b.length;
  const i = a.findIndex((v, k) => v !== b[k]);
  return i >= 0 && (a[i] as number) > (b[i] as number);
}

/** Every choice of pieces no wider than `most` in all, equal widths taken once, widest first. */
function* choices(rack: readonly number[], most: number): Generator<readonly number[]> {
  const widths = [...new Set(rack)];
  const counts = widths.map((w) => rack.filter((r) => r === w).length);
  function* from(i: number, room: number, pieces: readonly number[]): Generator<readonly number[]> {
    if (pieces.length > 0) yield pieces;
    for (let k = i; k < widths.length; k++) {
      const width = widths[k] as number;
      const used = pieces.filter((p) => p === width).length;
      if (width <= room + 1e-9 && used < (counts[k] as number))
        yield* from(k, room - width, [...pieces, width]);
    }
  }
  yield* from(0, most, []);
}
